/** Hands a text to the browser as a file. The mark at its head says to spreadsheets that it is UTF-8. */
export function saveFile(name: string, text: string): void {
  saveBlob(name, new Blob([`\uFEFF${text}`], { type: 'text/csv;charset=utf-8' }))
}

export function saveBlob(name: string, blob: Blob): void {
  const url = URL.createObjectURL(blob)
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  URL.revokeObjectURL(url)
}
