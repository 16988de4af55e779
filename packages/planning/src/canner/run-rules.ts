/** The published rules of a run, as the guidance of this edition prints them. */
import { cannerWaterRule, lidWaitRule, sealWindow, unsealedChoices, ventRule } from '@crib/guidance'
import { convert, type Reckoned } from '@crib/science'
import type { RunRules } from './run-setup.ts'

/** @source usda-aib-539-1994 (vent, seals, water); usda-aib-539-2015 (lid wait); unl-unsealed-jars (chill or again) */
export function publishedRunRules(): RunRules {
  const seals = sealWindow().figure
  return {
    ventMin: minutes(ventRule().figure),
    lidWaitMin: minutes(lidWaitRule().figure),
    sealFromMin: convert(seals.low ?? seals.value, seals.unit, 'Min'),
    sealToMin: convert(seals.high ?? seals.value, seals.unit, 'Min'),
    redoWithinMin: redoMin(true),
    redoWithinShortMin: redoMin(false),
    waterLowIn: cannerWaterRule().figure.value,
  }
}

function minutes({ value, unit }: Reckoned): number {
  return convert(value, unit, 'Min')
}

/** Time for the last choice to close, asked at the moment the jars come out. [min] */
function redoMin(methodWasRight: boolean): number {
  const hours = unsealedChoices(0, methodWasRight).choices.map(({ hoursLeft }) => hoursLeft ?? 0)
  return convert(Math.max(...hours), 'H', 'Min')
}
