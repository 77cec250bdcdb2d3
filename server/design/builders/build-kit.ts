/** Class kits of the design. */
import type { KitDeclaration } from '../../../grammar/tree/object-syntax.ts';
import type { Expression } from '../../../grammar/tree/syntax-nodes.ts';
import type { DesignContext } from '../design-context.ts';
import type { Panel } from '../design-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { optional, readCount, readPercent } from '../values/read-values.ts';
import type { Kit } from '../work-model.ts';

/** More students, or spare pieces, than any class has are a slip of the keyboard. */
const mostStudents = 10_000;

/** The kit a declaration describes; null where its panel or the number of students is missing or broken. */
export function buildKit(kit: KitDeclaration, panels: ReadonlyMap<string, Panel>, context: DesignContext): Kit | null {
  reportRepeated(kit, [], context);
  const panelProperty = propertyOf(kit, 'kit panel');
  const studentsProperty = propertyOf(kit, 'students');
  if (!panelProperty) reportMissing(kit, 'panel', 'panel coaster', context);
  if (!studentsProperty) reportMissing(kit, 'number of students', 'students 12', context);
  const panel = panelProperty && panels.get(panelProperty.name.text);
  const students = optional(studentsProperty?.value, (value) =>
    readCount(value, 'number of students', 1, mostStudents, context),
  );
  const breakage = optional(propertyOf(kit, 'breakage')?.value, (value) => readPercent(value, 'breakage', 1, context));
  const spares = propertyOf(kit, 'spares');
  const count = (value: Expression | null | undefined): number =>
    optional(value, (expression) => readCount(expression, 'number of spares', 0, mostStudents, context)) ?? 0;
  const sparesPerBag = count(spares?.perBag);
  const sparesWithTeacher = count(spares?.withTeacher);
  const studentsPerJig = optional(propertyOf(kit, 'jig')?.value, (value) =>
    readCount(value, 'number of students at a jig', 1, mostStudents, context),
  );
  if (!panel || students === null) return null;
  return {
    name: kit.name.text,
    range: kit.range,
    nameRange: kit.name.range,
    panel,
    students,
    done: [...new Set(propertyOf(kit, 'done')?.tasks ?? [])],
    breakage: breakage ?? 0,
    sparesPerBag,
    sparesWithTeacher,
    studentsPerJig: studentsPerJig ?? 1,
  };
}
