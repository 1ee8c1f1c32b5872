/**
 * Stands for the parts of Supabase's library that Rowcall never calls (files, functions, passkeys, administration): a phone
 * would wait for a tenth more at its first screen. `next.config.mjs` puts it in their place; whoever calls one is told.
 */

/** The library makes some of them at its start, so that only using one throws. */
class LeftOut {
  constructor() {
    // biome-ignore lint/correctness/noConstructorReturn: whatever is asked of it throws
    return new Proxy(this, { get: (_, name) => leftOut(String(name)) })
  }
}

function leftOut(name: unknown): never {
  throw new Error(`Rowcall leaves out this part of Supabase's library (${name}).`)
}

/** Told of every new token, whether anybody listens or not: `client.ts` opens the live channel's socket by itself. */
class RealtimeClient {
  setAuth() {}
}

// @supabase/realtime-js
// @supabase/storage-js
// @supabase/functions-js
// @supabase/auth-js
export {
  LeftOut as StorageApiError,
  LeftOut as StorageClient,
  LeftOut as FunctionRegion,
  LeftOut as FunctionsClient,
  LeftOut as FunctionsError,
  LeftOut as FunctionsFetchError,
  LeftOut as FunctionsHttpError,
  LeftOut as FunctionsRelayError,
  LeftOut as default,
  LeftOut as WebAuthnApi,
  leftOut as browserSupportsWebAuthn,
  leftOut as createCredential,
  leftOut as deserializeCredentialCreationOptions,
  leftOut as deserializeCredentialRequestOptions,
  leftOut as getCredential,
  leftOut as serializeCredentialCreationResponse,
  leftOut as serializeCredentialRequestResponse,
  leftOut as webAuthnAbortService,
  RealtimeClient,
}
