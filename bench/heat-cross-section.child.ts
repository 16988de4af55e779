/** Runs one cross-section in a program of its own and tells what memory it took, as JSON. Run by heat-cross-section.ts. */
import { conductInto } from '@crib/science'
import { plainCylinderMesh } from '../packages/science/src/heat/jar-mesh.ts'
import { CELLS, FOOD, HISTORY, INITIAL_C, PINT, STEP_COUNT } from './heat-made.ts'
import { peakKb } from './peak-memory.ts'

const beforeKb = peakKb()
conductInto(plainCylinderMesh(PINT, FOOD, CELLS), {
  initialC: () => INITIAL_C,
  water: HISTORY,
  steam: HISTORY,
  durationS: STEP_COUNT,
  stepS: 1,
  keepEvery: 60,
})
console.log(JSON.stringify({ beforeKb, peakKb: peakKb() }))
