/** Nourishment: what 100 g and a serving hold, from the public table, and what alkali does and does not add. Props: form. */
import { NUTRIENTS, NUTRITION_FOODS, type NutrientId, nutritionOf } from '@crib/guidance'
import type { FoodLotFact } from '@crib/journal'
import { formatReckoned } from '@crib/wording'
import { useState } from 'react'
import { ChoiceTags, CountField, Ledger, Reasons, SourceLine } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

type Food = (typeof NUTRITION_FOODS)[number]

/** The nearest food of the table; another may be tapped. */
const NEAREST: Record<FoodLotFact['form'], Food> = {
  jar: 'hominy-canned-white',
  fridge: 'hominy-canned-white',
  freezer: 'hominy-canned-white',
  tonight: 'hominy-canned-white',
  dried: 'grain-white',
  roasted: 'grain-white',
  flour: 'masa-flour-unenriched-white',
}
/** A cup of drained hominy, about; common practice, no source. [g] */
const SERVING_G = 165

export function Nourishment({ form }: { readonly form: FoodLotFact['form'] }) {
  const { say } = useWords()
  const [food, setFood] = useState<Food>(NEAREST[form])
  const [servingG, setServing] = useState(SERVING_G)
  const hundred = nutritionOf(food)
  const serving = nutritionOf(food, servingG)
  const text = (of: typeof hundred, id: NutrientId) => {
    const value = of.values.find((each) => each.id === id)
    return { number: value ? formatReckoned(value, 'alone') : say('pantry:not-in-table') }
  }
  return (
    <>
      <ChoiceTags
        legend={say('pantry:table-food')}
        hint={say('pantry:table-food-hint')}
        options={NUTRITION_FOODS.map((value) => ({ value, label: say(`pantry:food-${value}`) }))}
        value={food}
        onValue={setFood}
      />
      <CountField label={say('pantry:serving')} value={servingG} onValue={setServing} min={1} max={2000} />
      <Ledger
        caption={say('pantry:holds')}
        head={[say('pantry:nutrient'), say('pantry:per-100'), say('pantry:per-serving', { grams: servingG })]}
        rows={(Object.keys(NUTRIENTS) as NutrientId[]).map((id) => ({
          key: id,
          cells: [say(`pantry:nutrient-${id}`), text(hundred, id), text(serving, id)],
        }))}
      />
      <Reasons sentences={hundred.say} />
      <SourceLine sourceKey={hundred.values[0]!.sourceKeys[0]!} />
    </>
  )
}
