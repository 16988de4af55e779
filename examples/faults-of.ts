/** What is wrong with one answer, as sentences; none when it is as the scenario says. */
import type { Expected } from './case-files.ts'
import type { Answer } from './doors.ts'

export function faultsOf({ reckoning, text }: Answer, expected: Expected): string[] {
  const faults: string[] = []
  if (expected.refused === undefined) {
    if (reckoning.kind !== 'reckoned') return [`${reckoning.kind} instead of numbers: ${text}`]
    for (const [id, literal] of Object.entries(expected.values ?? {})) {
      const found = reckoning.values.find((value) => value.id === id)
      if (!found) faults.push(`${id} is missing`)
      else if (found.shown !== literal) faults.push(`${id} is ${found.shown}, not ${literal}`)
    }
  } else if (reckoning.kind !== 'refused') {
    return [`${reckoning.kind} instead of an honest refusal`]
  } else if (reckoning.refused !== expected.refused) {
    faults.push(`refused as ${reckoning.refused}, not ${expected.refused}`)
  }
  const said = plain(text)
  for (const phrase of expected.mustSay ?? []) {
    if (!said.includes(plain(phrase))) faults.push(`does not say "${phrase}"`)
  }
  for (const phrase of expected.mustNotSay ?? []) {
    if (said.includes(plain(phrase))) faults.push(`says "${phrase}"`)
  }
  return faults
}

/** A terminal breaks lines; what is said does not change by it. */
function plain(text: string): string {
  return text.toLowerCase().replace(/\s+/g, ' ')
}
