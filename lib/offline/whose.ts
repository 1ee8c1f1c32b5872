/** Which addresses are opened without signal. */

/** These the server writes itself, and they are of no use without it. */
const pagesOfServer = ['/join', '/set-up']

export function isPage(path: string): boolean {
  return !pagesOfServer.includes(path) && !path.includes('.')
}

export function isFile(path: string): boolean {
  return path.startsWith('/_next/static/')
}
