type BackendAddressProps = {
  /** Null: the page's own origin, where the local host serves both. */
  url: string | null
  anonKey: string | null
}

/**
 * Where the orchard's backend is, known at run time only, handed to the client in the page.
 * It is data, which a browser does not run, so it needs no nonce. Nothing in it can end the element.
 */
export function BackendAddress(address: BackendAddressProps) {
  return (
    <script type="application/json" id="rowcall-backend">
      {JSON.stringify(address).replaceAll('<', '\\u003c')}
    </script>
  )
}
