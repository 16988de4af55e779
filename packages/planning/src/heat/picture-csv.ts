/** The curves of a picture as CSV, one row a minute: what stands in the drawing and nothing more. */
import type { CurveBand, JarPicture } from '@crib/science'

export interface PictureCsv {
  readonly picture: JarPicture
  /** One reading a minute. */
  readonly band?: CurveBand
  /** Of a made-up jar the rate may be told; of a run of the book it never is. */
  readonly withRate: boolean
  /** Said above the head, each on a line of its own. */
  readonly remarks: readonly string[]
}

export function pictureCsv({ picture, band, withRate, remarks }: PictureCsv): string {
  const { cannerC, wallC, liquidC, coldSpotC, rateFraction, stepS } = picture
  const perMin = Math.round(60 / stepS)
  const columns: (readonly [name: string, at: (minute: number) => number | undefined, digits: number])[] = [
    ['time_min', (minute) => minute, 0],
    ['canner_c', (minute) => cannerC[minute * perMin], 2],
    ...(wallC ? [['glass_c', (minute: number) => wallC[minute * perMin], 2] as const] : []),
    ...(liquidC ? [['liquid_c', (minute: number) => liquidC[minute * perMin], 2] as const] : []),
    ['slowest_place_c', (minute) => coldSpotC[minute * perMin], 2],
    ...(band
      ? [
          ['slowest_place_low_c', (minute: number) => band.lowC[minute], 2] as const,
          ['slowest_place_high_c', (minute: number) => band.highC[minute], 2] as const,
        ]
      : []),
    ...(withRate
      ? [['made_up_jar_lethal_rate_250f', (minute: number) => rateFraction[minute * perMin], 5] as const]
      : []),
  ]
  const rows = Array.from({ length: Math.floor((coldSpotC.length - 1) / perMin) + 1 }, (_, minute) =>
    columns.map(([, at, digits]) => at(minute)?.toFixed(digits) ?? '').join(','),
  )
  return `${[...remarks.map((line) => `# ${line}`), columns.map(([name]) => name).join(','), ...rows].join('\n')}\n`
}
