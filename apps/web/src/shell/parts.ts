/** The parts of the book in the order of the year, each with its address, its drawing and its route file. */
import type { MessageKey } from '@crib/wording'
import { lazy } from 'react'
import type { DrawingName } from '../drawings/drawing.tsx'

export interface BookPart {
  readonly path: string
  readonly name: MessageKey
  readonly drawing: DrawingName
  readonly Screen: React.LazyExoticComponent<React.ComponentType>
}

export const PARTS: readonly BookPart[] = [
  { path: '/', name: 'shell:part-season', drawing: 'year', Screen: lazy(() => import('../routes/home.tsx')) },
  { path: '/seed', name: 'shell:part-seed', drawing: 'ear', Screen: lazy(() => import('../routes/seed.tsx')) },
  { path: '/crib', name: 'shell:part-crib', drawing: 'braid', Screen: lazy(() => import('../routes/crib.tsx')) },
  { path: '/kettle', name: 'shell:part-kettle', drawing: 'pot', Screen: lazy(() => import('../routes/kettle.tsx')) },
  { path: '/canner', name: 'shell:part-canner', drawing: 'canner', Screen: lazy(() => import('../routes/canner.tsx')) },
  { path: '/keeping', name: 'shell:part-keeping', drawing: 'tin', Screen: lazy(() => import('../routes/keeping.tsx')) },
  { path: '/pantry', name: 'shell:part-pantry', drawing: 'jar', Screen: lazy(() => import('../routes/pantry.tsx')) },
  { path: '/field', name: 'shell:part-field', drawing: 'field', Screen: lazy(() => import('../routes/field.tsx')) },
  { path: '/paper', name: 'shell:part-paper', drawing: 'sheet', Screen: lazy(() => import('../routes/paper.tsx')) },
  {
    path: '/workbench',
    name: 'shell:part-workbench',
    drawing: 'scale',
    Screen: lazy(() => import('../routes/workbench.tsx')),
  },
  { path: '/house', name: 'shell:part-house', drawing: 'house', Screen: lazy(() => import('../routes/house.tsx')) },
]

/** Pages reached from a part, without a tag of their own. */
export const PLACES: readonly Pick<BookPart, 'path' | 'Screen'>[] = [
  { path: '/plan', Screen: lazy(() => import('../routes/plan.tsx')) },
  { path: '/heat', Screen: lazy(() => import('../routes/heat.tsx')) },
  { path: '/people', Screen: lazy(() => import('../routes/people.tsx')) },
]
