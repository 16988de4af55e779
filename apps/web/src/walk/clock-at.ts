/** An instant as minutes after midnight in a zone, for formatClock. */
export function clockAt(atMs: number, zone: string): number {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    hour: 'numeric',
    minute: 'numeric',
  }).formatToParts(atMs)
  const of = Object.fromEntries(parts.map(({ type, value }) => [type, Number(value)]))
  return of.hour! * 60 + of.minute!
}
