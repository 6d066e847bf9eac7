import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { BUILT, built, ROOT, STACK_TRACE, scratch } from './built-command.ts'

const PART = 'parts/OX-112-03.yaml'

/** Every file below it. */
const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(({ name }) => name)

describe('the built command and the disk', () => {
  it.each([
    ['a device that never ends', ['check', '/dev/zero'], /\/dev\/zero: cannot be read: that is a pipe or a device/],
    ['a folder', ['check', 'parts'], /parts: cannot be read: that is a folder/],
    ['a shop file behind a file', ['check', PART, '--shop', 'package.json/x'], /a folder on the way is a file/],
    ['a name that no disk takes', ['check', 'x'.repeat(300)], /the name is too long/],
    [
      'a file where the folder for paper should be',
      ['traveller', PART, '--format', 'html', '--out', 'package.json'],
      /cannot be written/,
    ],
    [
      'a folder behind a file',
      ['traveller', PART, '--format', 'html', '--out', 'package.json/x'],
      /a folder on the way is a file/,
    ],
    ['a device to write over', ['new', 'pin', '/dev/null', '--force'], /something other than a file is there/],
    ['a name too long to write', ['new', 'pin', `${'x'.repeat(300)}.yaml`], /the name is too long/],
    ['a folder that cannot be listed', ['traveller', PART, '--templates', 'nowhere'], /nowhere: cannot be read/],
  ])('%s: one line, status 2', (_, argv, why) => {
    const { status, stdout, stderr } = built(...argv)
    const lines = stderr.split('\n').filter(line => line.startsWith('linerwright: '))
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatch(why)
    expect(stderr).not.toMatch(STACK_TRACE)
    expect(stdout).toBe('')
    expect(status).toBe(2)
  })

  it('a name as long as the folder takes is written, and nothing is left beside it', () => {
    const folder = scratch()
    const name = `${'x'.repeat(250)}.yaml`
    expect(built('new', 'pin', join(folder, name)).status).toBe(0)
    expect(readdirSync(folder)).toEqual([name])
  })

  it('what a killed run has left is cleared away by the next', () => {
    const folder = scratch()
    built('new', 'pin', join(folder, 'one.yaml'))
    const { pid } = spawnSync(process.execPath, ['--version'])
    const host = spawnSync(process.execPath, ['-p', 'os.hostname()'], { encoding: 'utf8' }).stdout.trim()
    const left = `.linerwright-${host.replace(/[^A-Za-z0-9]/g, '').slice(0, 24)}-${pid}-0`
    writeFileSync(join(folder, left), 'half')
    writeFileSync(join(folder, '.linerwright-elsewhere-1'), 'of another machine')
    built('new', 'pin', join(folder, 'two.yaml'))
    expect(readdirSync(folder)).toEqual(['.linerwright-elsewhere-1', 'one.yaml', 'two.yaml'])
  })

  it('a full disk under standard output is one line and status 2', ({ skip }) => {
    if (process.platform !== 'linux') return skip('needs /dev/full')
    const { status, stderr } = spawnSync('sh', ['-c', `"${process.execPath}" "${BUILT}" plan ${PART} > /dev/full`], {
      encoding: 'utf8',
      cwd: ROOT,
    })
    expect(stderr).toContain('linerwright: standard output cannot be written: the disk is full\n')
    expect(stderr).not.toMatch(STACK_TRACE)
    expect(status).toBe(2)
  })

  it('a disk that takes no more leaves no half file and no half packet', ({ skip }) => {
    if (process.platform !== 'linux') return skip('needs ulimit')
    const folder = scratch()
    const line = `ulimit -f 100; "${process.execPath}" "${BUILT}" traveller ${PART} --out "${folder}"`
    const { status, stderr } = spawnSync('bash', ['-c', line], { encoding: 'utf8', cwd: ROOT })
    expect(stderr).toMatch(/^linerwright: .*\.(pdf|html): cannot be written: /m)
    expect(stderr).not.toMatch(STACK_TRACE)
    expect(status).toBe(2)
    expect(filesIn(folder)).toEqual([])
  })

  it('a reader that closes the pipe is no fault, and the files are written all the same', () => {
    const folder = scratch()
    const line = `"${process.execPath}" "${BUILT}" traveller ${PART} --out "${folder}" 2>&1 >&- | true; "${process.execPath}" "${BUILT}" workings ${PART} | head -n 1`
    const { stderr } = spawnSync('bash', ['-c', line], { encoding: 'utf8', cwd: ROOT })
    expect(stderr).not.toMatch(STACK_TRACE)
    expect(filesIn(folder)).toHaveLength(5)
  })
})

/** Runs a command with both its streams on a terminal and prints what came, then its status. */
const ON_A_TERMINAL = `
import os, pty, sys
pid, terminal = pty.fork()
if pid == 0: os.execvp(sys.argv[1], sys.argv[1:])
while True:
    try: data = os.read(terminal, 65536)
    except OSError: break
    if not data: break
    sys.stdout.buffer.write(data)
print("\\nstatus", os.waitstatus_to_exitcode(os.waitpid(pid, 0)[1]))
`

describe('the built command on a terminal', () => {
  const terminal = (...argv: readonly string[]) =>
    spawnSync('python3', ['-c', ON_A_TERMINAL, process.execPath, BUILT, ...argv], { encoding: 'utf8', cwd: ROOT })

  it('does four files with a bar that it clears again', ({ skip }) => {
    if (spawnSync('python3', ['-c', 'import pty']).status !== 0) return skip('needs python3 with pty for a terminal')
    const folder = scratch()
    mkdirSync(folder, { recursive: true })
    const names = ['a', 'b', 'c', 'd'].map(name => join(folder, `${name}.yaml`))
    for (const name of names) writeFileSync(name, readFileSync(join(ROOT, PART)))
    const { stdout } = terminal('check', ...names)
    expect(stdout).toMatch(/█/)
    expect(stdout).toMatch(/4 of 4/)
    expect(stdout).toMatch(/status 0\s*$/)
    expect(stdout).not.toMatch(STACK_TRACE)
    expect(stdout.slice(stdout.lastIndexOf('░'))).toContain('\r\u001b[K')
  })
})
