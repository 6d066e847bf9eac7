/** A text as part of a file name: what a file name cannot have becomes a dash, so that it never leaves its folder. */
export const inFileName = (text: string): string => text.replace(/[^\p{L}\p{N}._-]+/gu, '-').replace(/^\.+/, '-')
