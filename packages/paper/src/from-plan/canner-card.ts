/** A planned card onto paper: the likelier gauge's number, or the card that prints none. */
import type { CardOutcome } from '@crib/planning'
import type { Reckoned, Sentence } from '@crib/science'
import type { Words } from '@crib/wording'
import { cannerCard, type GaugeTest, refusedCard } from '../documents/canner-card.ts'
import type { PrintSetting, Said } from '../documents/said.ts'
import type { PaperDocument } from '../model.ts'

/** What the card itself does not hold. */
export interface CardBeside {
  readonly canner: string
  readonly site: string
  readonly jar?: Said
  readonly loadCodes?: readonly string[]
  /** From the published table of the lid wait. [Min] */
  readonly lidWaitMin: Reckoned
  readonly gaugeTest?: GaugeTest
  /** Lines where a habit and today's direction differ. */
  readonly habits?: readonly Sentence[]
  /** Printed where no number is. */
  readonly askWhom: readonly Sentence[]
}

/** One sheet for one canner. Reasons and standing are the plan's own. */
export function cannerCardOfPlan(
  outcome: CardOutcome,
  beside: CardBeside,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const { canner, site } = beside
  if (outcome.kind === 'refused') {
    const [first, ...rest] = outcome.why
    const why = [...rest, ...outcome.forInformation]
    return refusedCard({ canner, site, refused: first ?? '', why, askWhom: outcome.askWhom }, setting, words)
  }
  const route = outcome.routes.find(({ usable }) => usable)
  if (!route?.holdAt) {
    const why = outcome.routes.flatMap(({ reasons }) => reasons)
    const refused: Sentence = { key: 'paper:card-no-gauge' }
    return refusedCard({ canner, site, refused, why, askWhom: beside.askWhom }, setting, words)
  }
  const isCorrected = route.error !== undefined && route.error.value !== 0
  return cannerCard(
    {
      canner,
      site,
      gauge: route.gauge,
      hold: route.holdAt,
      ...(route.gauge === 'dial' && route.required && { dipBelow: route.required }),
      ...(isCorrected && route.trueAtHold && { trueAtHold: route.trueAtHold }),
      tableValue: route.table,
      elevation: outcome.elevation,
      why: route.reasons,
      ventMin: outcome.vent,
      ...(outcome.minutes && { processMin: outcome.minutes }),
      lidWaitMin: beside.lidWaitMin,
      standing: [...outcome.standing, ...outcome.withheld],
      cautions: outcome.cautions,
      habits: [...(beside.habits ?? []), ...outcome.reasons],
      ...(beside.jar !== undefined && { jar: beside.jar }),
      ...(beside.loadCodes && { loadCodes: beside.loadCodes }),
      ...(beside.gaugeTest && { gaugeTest: beside.gaugeTest }),
    },
    setting,
    words,
  )
}
