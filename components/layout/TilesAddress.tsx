type TilesAddressProps = {
  /** Null: none is set where Rowcall runs. */
  url: string | null
  by: string | null
}

/** Where pictures of the ground come from, as whoever runs Rowcall has set it; proxy.ts lets the browser ask there. */
export function TilesAddress(address: TilesAddressProps) {
  return (
    <script type="application/json" id="rowcall-tiles">
      {JSON.stringify(address).replaceAll('<', '\\u003c')}
    </script>
  )
}
