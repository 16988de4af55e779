/**
 * Tables that keep facts, the same text for every SQL store. Everything in them can be made anew from the entries, so
 * they are no part of what must not be lost. `{text}` and `{big}` are filled in by the engine.
 */
const TABLES = [
  // How far the facts have come. `turn` counts changes: a fold that worked from an older turn is thrown away.
  `create table fact_state (kitchen_id {text} not null primary key, version {text} not null, up_to {big} not null,
    entry_count {big} not null, turn {big} not null)`,
  `create table fact (kitchen_id {text} not null, part {text} not null, fact_id {text} not null, still_open {big} not null,
    value {text} not null, primary key (kitchen_id, part, fact_id))`,
  'create index fact_open on fact (kitchen_id, part, still_open, fact_id)',
  `create table question (kitchen_id {text} not null, story {text} not null, rank {big} not null, place {big} not null,
    value {text} not null, primary key (kitchen_id, story, rank, place))`,
  // A lot names batches, a batch and a seed put by name lots: a change of one moves the balance of the other.
  `create table story_ref (kitchen_id {text} not null, from_story {text} not null, to_story {text} not null,
    primary key (kitchen_id, from_story, to_story))`,
  'create index story_ref_back on story_ref (kitchen_id, to_story)',
  // Stories to fold again although no new entry touches them: one of their bodies was erased.
  `create table stale_story (kitchen_id {text} not null, story {text} not null, primary key (kitchen_id, story))`,
]

export function factTables(types: { readonly text: string; readonly big: string }): readonly string[] {
  return TABLES.map((table) => table.replaceAll('{text}', types.text).replaceAll('{big}', types.big))
}

/**
 * Who names a story, with the story that names it in the index as well: without it a planner that has counted nothing
 * read all the references of a kitchen instead.
 */
export const REFS_EITHER_WAY = [
  'drop index story_ref_back',
  'create index story_ref_back on story_ref (kitchen_id, to_story, from_story)',
]

export const FACT_TABLES = factTables({ text: 'text', big: 'integer' })
