/** Where the host can be reached, and what kind of day that allows. */
import { networkInterfaces } from 'node:os'

export type Addresses = { thisMachine: string | null; network: string[]; isSecure: boolean }

export function addressesOf(address: string, port: number, isSecure: boolean): Addresses {
  const scheme = isSecure ? 'https' : 'http'
  const at = (host: string) => `${scheme}://${host.includes(':') ? `[${host}]` : host}:${port}`
  const isLoopback = ['127.0.0.1', '::1', 'localhost'].includes(address)
  const isEverywhere = ['0.0.0.0', '::'].includes(address)
  return {
    thisMachine: isLoopback || isEverywhere ? at('localhost') : null,
    network: isEverywhere ? networkHosts().map(at) : isLoopback ? [] : [at(address)],
    isSecure,
  }
}

export function sentencesOf({ thisMachine, network, isSecure }: Addresses): string[] {
  return [
    'Rowcall is running.',
    ...(thisMachine ? [`  On this machine:       ${thisMachine}`] : []),
    ...network.map((url) => `  On the local network:  ${url}`),
    '',
    ...(isSecure
      ? [
          'A real day is possible: over https everything works, as long as phones reach this machine under the',
          "certificate's name, also by mobile data.",
        ]
      : [
          'For a trial: over plain http phones cannot use location, keep the screen on, or open Rowcall without signal.',
          'A real day needs https under a name that phones reach by mobile data: set ROWCALL_TLS_CERT and',
          'ROWCALL_TLS_KEY, put a reverse proxy in front, or run Rowcall on a hosted machine.',
        ]),
  ]
}

function networkHosts(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(
      ({ family, internal, address }) => family === 'IPv4' && !internal && !isSelfGiven(address)
    )
    .map(({ address }) => address)
}

/** What a machine gives itself when nobody gives it one. */
function isSelfGiven(address: string): boolean {
  return address.startsWith('169.254.')
}
