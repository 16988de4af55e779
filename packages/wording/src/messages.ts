/** Every message file, one per part, and the key type made from them: a wrong key does not compile. */
import canner from '../../../messages/en/canner.json' with { type: 'json' }
import cautions from '../../../messages/en/cautions.json' with { type: 'json' }
import common from '../../../messages/en/common.json' with { type: 'json' }
import crib from '../../../messages/en/crib.json' with { type: 'json' }
import errors from '../../../messages/en/errors.json' with { type: 'json' }
import field from '../../../messages/en/field.json' with { type: 'json' }
import fields from '../../../messages/en/fields.json' with { type: 'json' }
import guidance from '../../../messages/en/guidance.json' with { type: 'json' }
import heat from '../../../messages/en/heat.json' with { type: 'json' }
import keeping from '../../../messages/en/keeping.json' with { type: 'json' }
import kettle from '../../../messages/en/kettle.json' with { type: 'json' }
import pantry from '../../../messages/en/pantry.json' with { type: 'json' }
import paper from '../../../messages/en/paper.json' with { type: 'json' }
import season from '../../../messages/en/season.json' with { type: 'json' }
import seed from '../../../messages/en/seed.json' with { type: 'json' }
import shell from '../../../messages/en/shell.json' with { type: 'json' }
import terminal from '../../../messages/en/terminal.json' with { type: 'json' }
import workbench from '../../../messages/en/workbench.json' with { type: 'json' }

export const ENGLISH = {
  canner,
  cautions,
  common,
  crib,
  errors,
  field,
  fields,
  guidance,
  heat,
  keeping,
  kettle,
  pantry,
  paper,
  season,
  seed,
  shell,
  terminal,
  workbench,
} as const

export type Part = keyof typeof ENGLISH

/** i18next picks `key_one` or `key_other` for a count; callers name the key without the ending. */
type WithoutPlural<K> = K extends `${infer Stem}_one` | `${infer Stem}_other` ? Stem : K

export type MessageKey = {
  [P in Part]: `${P}:${WithoutPlural<keyof (typeof ENGLISH)[P]> & string}`
}[Part]
