/** What day and year it is where the browser's kitchens are, whatever the hour and wherever the test itself runs. */

/** The zone of every page a test opens, unless it asks for another. */
export const KITCHEN_ZONE = 'America/Toronto'

/** The calendar day in the kitchen so many days before today, YYYY-MM-DD. */
export function kitchenDay(daysAgo = 0): string {
  const [year, month, day] = new Date()
    .toLocaleDateString('en-CA', { timeZone: KITCHEN_ZONE })
    .split('-')
    .map(Number) as [number, number, number]
  return new Date(Date.UTC(year, month - 1, day - daysAgo)).toISOString().slice(0, 10)
}

export function kitchenYear(): number {
  return Number(kitchenDay().slice(0, 4))
}
