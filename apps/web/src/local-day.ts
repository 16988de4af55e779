/** The calendar day on this device's clock, YYYY-MM-DD. */
export function localDay(at: Date = new Date()): string {
  const two = (value: number) => String(value).padStart(2, '0')
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
}
