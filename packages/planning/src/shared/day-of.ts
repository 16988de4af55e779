/** When something was, by the calendar of the place it was told at. */

/** A moment of the book with the zone it was told in. */
interface Moment {
  readonly instant: string
  readonly zone: string
}

/** The day of a moment where it was. YYYY-MM-DD */
export function dayOf({ instant, zone }: Moment): string {
  return new Intl.DateTimeFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(
    new Date(instant),
  )
}

/** The year of it, where the people were. */
export function yearOf({ at }: { readonly at: Moment }): number {
  return Number(dayOf(at).slice(0, 4))
}
