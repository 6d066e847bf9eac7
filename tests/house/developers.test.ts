import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import rooms from '../../.build/rooms.json' with { type: 'json' }
import manifest from '../../package.json' with { type: 'json' }

const page = readFileSync('DEVELOPERS.md', 'utf8')
const names = (word: string): boolean =>
  new RegExp(`(?<![\\w@/-])${word.replaceAll(/[.*+?^$()|/]/g, '\\$&')}(?![\\w/-])`).test(page)

describe('DEVELOPERS.md', () => {
  it('names every package that is used, and what for', () => {
    const packages = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies })
    expect(packages.length).toBeGreaterThan(20)
    expect(packages.filter(name => !names(name))).toEqual([])
    const inRooms = rooms.rooms.flatMap(room => room.packages ?? [])
    expect(inRooms.filter(name => !packages.includes(name))).toEqual([])
  })

  it('names every file of the ground floor', () => {
    const files = readdirSync('src').filter(name => name.endsWith('.ts'))
    expect(files.filter(name => !names(name) && !names(`src/${name}`))).toEqual([])
  })

  it('tells how every script of the package is run', () => {
    const scripts = Object.keys(manifest.scripts).filter(name => name !== 'build' && name !== 'prepare')
    expect(scripts.filter(name => !page.includes(`npm run ${name}\``) && !page.includes(`npm ${name}\``))).toEqual([])
  })

  it('names no file that there is not', () => {
    const paths = [...page.matchAll(/`((?:src|tests|\.build|\.ci|templates)\/[\w./-]+)`/g)].map(([, path = '']) => path)
    expect(paths.length).toBeGreaterThan(20)
    const there = (path: string): boolean => {
      const cut = path.replace(/\/$/, '')
      const folder = cut.includes('/') ? cut.slice(0, cut.lastIndexOf('/')) : '.'
      return readdirSync(folder).includes(cut.slice(cut.lastIndexOf('/') + 1))
    }
    expect(paths.filter(path => !there(path))).toEqual([])
  })
})
