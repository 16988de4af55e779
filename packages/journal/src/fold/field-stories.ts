/** The stories of the field: a plot with the other corn near it, and a planting from sowing to harvest. */
import type { LedgerLine, PlantingFact, PlotFact } from './facts.ts'
import { told } from './stories.ts'

export function plotStory(lines: readonly LedgerLine[]): PlotFact | null {
  const plot = told(lines, 'plot-recorded').at(-1)
  if (!plot) return null
  // The latest word on each neighbour stands, in the order they were first told of.
  const neighbours = new Map(told(lines, 'neighbour-corn-recorded').map((one) => [one.neighbourId, one]))
  const plans = new Map(told(lines, 'field-planned').map((one) => [one.seasonYear, one]))
  return {
    ...plot,
    neighbours: [...neighbours.values()],
    plans: [...plans.values()].sort((a, b) => a.seasonYear - b.seasonYear),
  }
}

export function plantingStory(lines: readonly LedgerLine[]): PlantingFact | null {
  const planting = told(lines, 'planting-recorded').at(-1)
  if (!planting) return null
  return {
    ...planting,
    stands: told(lines, 'stand-counted'),
    tassels: told(lines, 'tassel-seen'),
    silks: told(lines, 'silk-seen'),
    harvests: told(lines, 'harvest-brought-in'),
  }
}
