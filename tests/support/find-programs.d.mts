export function findChromium(options?: { install?: boolean }): string | undefined
export function findPostgres(options?: { install?: boolean }): string | undefined
