/** A day and a clock time as people here write them. */
export function whenText(instant: string): string {
  return new Date(instant).toLocaleString('en-US', {
    weekday: 'short',
    month: 'short',
    day: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
  })
}
