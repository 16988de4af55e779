/** What drawings of temperature over time share: their margins, both temperature scales, and numbered moments. */
import { fToC } from '@crib/science'

export const LEFT = 44
export const RIGHT = 44
/** Two rows of numbered moments, so that neighbours do not touch. */
export const TOP = 58
export const BOTTOM = 30
export const HEIGHT = 344

export type Scale = (value: number) => number

const FAHRENHEIT = [100, 140, 180, 220, 250]
const CELSIUS = [40, 60, 80, 100, 120]

/** °F to the left with its lines, °C to the right. `y`: from °C. */
export function TemperatureAxes({ y, width }: { readonly y: Scale; readonly width: number }) {
  return (
    <g>
      {FAHRENHEIT.map((F) => (
        <g key={F}>
          <line x1={LEFT} x2={width - RIGHT} y1={y(fToC(F))} y2={y(fToC(F))} stroke="var(--rule)" />
          <text x={LEFT - 6} y={y(fToC(F)) + 5} textAnchor="end">
            {F}
          </text>
        </g>
      ))}
      {CELSIUS.map((C) => (
        <g key={C}>
          <line x1={width - RIGHT} x2={width - RIGHT + 5} y1={y(C)} y2={y(C)} stroke="var(--ink)" />
          <text x={width - RIGHT + 8} y={y(C) + 5}>
            {C}
          </text>
        </g>
      ))}
      <text x={LEFT - 6} y={TOP - 10} textAnchor="end" className="heat-strong">
        °F
      </text>
      <text x={width - RIGHT + 8} y={TOP - 10} className="heat-strong">
        °C
      </text>
      <line
        x1={LEFT}
        x2={width - RIGHT}
        y1={HEIGHT - BOTTOM}
        y2={HEIGHT - BOTTOM}
        stroke="var(--ink)"
        strokeWidth="2"
      />
    </g>
  )
}

/** A moment of the run with its number above, told in words beside the drawing. */
export function NumberedMoment({ atX, index }: { readonly atX: number; readonly index: number }) {
  const atY = TOP - (index % 2 === 0 ? 42 : 17)
  return (
    <g>
      <line
        x1={atX}
        x2={atX}
        y1={atY + 11}
        y2={HEIGHT - BOTTOM}
        stroke="var(--twine)"
        strokeWidth="1.5"
        strokeDasharray="2 5"
      />
      <circle cx={atX} cy={atY} r="11" fill="var(--paper)" stroke="var(--ink)" strokeWidth="2" />
      <text x={atX} y={atY + 5} textAnchor="middle" className="heat-strong">
        {index + 1}
      </text>
    </g>
  )
}
