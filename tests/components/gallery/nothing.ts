/** For pictures that nobody presses. */
export function nothing(): void {}
