/** The readings of a jar while its canner stood steady, picked out of a logger's traces: what a heating line is fitted to. */
import type { LoggerTrace } from './logger-traces.ts'
import type { ProposedMark } from './run-marks.ts'
import { traceAt } from './thin-trace.ts'

/** Inputs of the calculation heating-fit. */
export interface HeatingTrial {
  /** Minutes from the moment the canner stood at pressure, and °C inside the jar. */
  readonly readings: readonly { readonly time: number; readonly value: number }[]
  readonly mediumC: { readonly value: number; readonly unit: 'C' }
  readonly initialC: { readonly value: number; readonly unit: 'C' }
}

const MOST_READINGS = 40
const FEWEST_READINGS = 3
/** Nearer to the canner a probe's own error is as large as what is left. [°C] Project rule. */
const NEAR_C = 0.5

/** Null where no probe was in a jar and in the canner, or the canner stood too short a time. */
export function heatingTrial(traces: readonly LoggerTrace[], marks: readonly ProposedMark[]): HeatingTrial | null {
  const of = (role: LoggerTrace['role']) => traces.find((trace) => trace.role === role)?.points
  const jarC = of('jar')
  const cannerC = of('canner')
  const fromMin = marks.find(({ event }) => event.type === 'at-pressure')?.atMin
  const toMin = marks.find(({ event }) => event.type === 'dipped' || event.type === 'heat-off')?.atMin
  if (!jarC || !cannerC || fromMin === undefined || toMin === undefined) return null
  const initialC = traceAt(jarC, fromMin)
  const mediumC = traceAt(cannerC, (fromMin + toMin) / 2)
  if (initialC === null || mediumC === null) return null
  const stepMin = Math.max(0.5, (toMin - fromMin) / MOST_READINGS)
  const readings: { time: number; value: number }[] = []
  for (let time = 0; fromMin + time <= toMin; time += stepMin) {
    const value = traceAt(jarC, fromMin + time)
    if (value === null || value > mediumC - NEAR_C) break
    readings.push({ time: toDigits(time), value: toDigits(value) })
  }
  if (readings.length < FEWEST_READINGS) return null
  return {
    readings,
    mediumC: { value: toDigits(mediumC), unit: 'C' },
    initialC: { value: toDigits(initialC), unit: 'C' },
  }
}

const toDigits = (value: number) => Number(value.toFixed(2))
