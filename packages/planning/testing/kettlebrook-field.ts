/** What Kettlebrook Hollow plants from (S1 of the scenarios: invented): 60 lb to eat, in rows. */
export { INVENTED_FIELD as KETTLEBROOK_FIELD } from '../src/field/field-plan.calc.ts'
