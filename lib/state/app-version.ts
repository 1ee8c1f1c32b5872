/** Raised when an older app can no longer speak with the backend (`min_client`). */
export const appVersion = 1
