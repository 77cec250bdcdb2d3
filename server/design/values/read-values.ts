/** What an expression says in its place: a length, an angle, a count. Each gives null where it says nothing usable, and reports why. */
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Expression, PointSyntax } from '../../../grammar/tree/syntax-nodes.ts';
import type { Point } from '../../geometry/point.ts';
import type { DesignContext } from '../design-context.ts';
import { evaluateExpression, readAs } from './evaluate-expression.ts';
import {
  angleDimension,
  cubicMillimetresInMillilitre,
  dimensionName,
  isPlain,
  lengthDimension,
  massDimension,
  percentDimension,
  plainNumber,
  sameDimension,
  timeDimension,
  volumeDimension,
} from './quantity.ts';
import type { Dimension } from './quantity.ts';

/** Which amounts are sound: any, those from 0, those above it. */
export type Sign = 'any' | 'notNegative' | 'positive';

/** What a value that may be missing says: null where there is none. */
export const optional = (
  value: Expression | null | undefined,
  read: (value: Expression) => number | null,
): number | null => (value ? read(value) : null);

/** A length in mm. `what` names it in messages: "side". */
export function readLength(expression: Expression, what: string, sign: Sign, context: DesignContext): number | null {
  const amount = readDimension(expression, what, lengthDimension, '36mm', context);
  return signed(amount, expression, what, sign, 'mm', context);
}

/** The amount, or null where its sign is wrong, which is reported. */
function signed(
  amount: number | null,
  { range }: Expression,
  what: string,
  sign: Sign,
  unit: string,
  context: DesignContext,
): number | null {
  if (amount === null || sign === 'any' || amount > 0 || (sign === 'notNegative' && amount === 0)) return amount;
  const least = sign === 'positive' ? 'more than 0' : '0 or more';
  const shown = unit === 'mm' ? measure.given(amount) : unit === '' ? String(amount) : `${String(amount)} ${unit}`;
  const message = words`The ${what} must be ${least}, and this is ${shown}. Give a larger ${unit === 'mm' ? 'length' : 'one'}.`;
  context.report(problemAt('notPositive', range, message));
  return null;
}

/** An angle in degrees; with `within`, strictly between its two limits. */
export function readAngle(
  expression: Expression,
  what: string,
  within: readonly [number, number] | null,
  context: DesignContext,
): number | null {
  const amount = readDimension(expression, what, angleDimension, '45deg', context);
  if (amount === null || !within || (amount > within[0] && amount < within[1])) return amount;
  const message = words`The ${what} must lie between ${measure.fineAngle(within[0])} and ${measure.fineAngle(within[1])}, and this is ${measure.fineAngle(amount)}. Choose an angle between them.`;
  context.report(problemAt('outOfRange', expression.range, message));
  return null;
}

/** A mass in g. */
export const readMass = (expression: Expression, what: string, sign: Sign, context: DesignContext): number | null =>
  signed(readDimension(expression, what, massDimension, '400g', context), expression, what, sign, 'g', context);

/** A time in minutes. */
export const readTime = (expression: Expression, what: string, sign: Sign, context: DesignContext): number | null =>
  signed(readDimension(expression, what, timeDimension, '25min', context), expression, what, sign, 'min', context);

/** A volume in mL. */
export function readVolume(expression: Expression, what: string, sign: Sign, context: DesignContext): number | null {
  const cubic = readDimension(expression, what, volumeDimension, '400mL', context);
  return signed(cubic === null ? null : cubic / cubicMillimetresInMillilitre, expression, what, sign, 'mL', context);
}

/** A plain number; `unit` names what it counts, in messages: "MPa". */
export const readFigure = (
  expression: Expression,
  what: string,
  sign: Sign,
  unit: string,
  context: DesignContext,
): number | null =>
  signed(readDimension(expression, what, plainNumber, '12.5', context), expression, what, sign, unit, context);

/** A plain number in `unit`, within limits that no such figure leaves: outside them it is a slip of the unit. */
export function readFigureWithin(
  expression: Expression,
  what: string,
  [least, most]: readonly [number, number],
  unit: string,
  context: DesignContext,
): number | null {
  const figure = readDimension(expression, what, plainNumber, String(least), context);
  if (figure === null || (figure >= least && figure <= most)) return figure;
  const message = `The ${what} is in ${unit} and lies from ${String(least)} to ${String(most)}; this is ${String(figure)}. Give it in ${unit}.`;
  context.report(problemAt('outOfRange', expression.range, message));
  return null;
}

/** A percentage as a fraction, in [0, limit). */
export function readPercent(
  expression: Expression,
  what: string,
  limit: number,
  context: DesignContext,
): number | null {
  const amount = readDimension(expression, what, percentDimension, '8%', context);
  if (amount === null || (amount >= 0 && amount < limit)) return amount;
  const most = Number.isFinite(limit) ? ` and less than ${String(limit * 100)}%` : '';
  const message = `The ${what} must be 0% or more${most}. Give such a percentage.`;
  context.report(problemAt('outOfRange', expression.range, message));
  return null;
}

/** A fraction from 0 to 1, plain or as a percentage. */
export function readFraction(expression: Expression, what: string, context: DesignContext): number | null {
  const value = evaluateExpression(expression, context);
  if (!value) return null;
  if (!isPlain(value.dimension) && !value.dimension.percent) {
    return wrong(expression, what, 'a part from 0 to 1', value.dimension, '0.5', context);
  }
  if (value.amount >= 0 && value.amount <= 1) return value.amount;
  const message = `The ${what} must lie from 0 to 1, and this is ${String(value.amount)}. Give a part of the whole, such as 0.5.`;
  context.report(problemAt('outOfRange', expression.range, message));
  return null;
}

/** A factor above 0, plain or as a percentage. */
export function readFactor(expression: Expression, what: string, context: DesignContext): number | null {
  const value = evaluateExpression(expression, context);
  if (!value) return null;
  if (!isPlain(value.dimension) && !value.dimension.percent) {
    return wrong(expression, what, 'a plain number', value.dimension, '1.5', context);
  }
  if (value.amount > 0) return value.amount;
  const message = `The ${what} must be more than 0, and this is ${String(value.amount)}. Give a larger number; to turn something over, mirror it.`;
  context.report(problemAt('notPositive', expression.range, message));
  return null;
}

/** A whole number from `least` to `most`. */
export function readCount(
  expression: Expression,
  what: string,
  least: number,
  most: number,
  context: DesignContext,
): number | null {
  const value = evaluateExpression(expression, context);
  if (!value) return null;
  if (!isPlain(value.dimension)) return wrong(expression, what, 'a whole number', value.dimension, '3', context);
  if (Number.isInteger(value.amount) && value.amount >= least && value.amount <= most) return value.amount;
  const message = `The ${what} must be a whole number from ${String(least)} to ${String(most)}, and this is ${String(value.amount)}. Give such a number.`;
  context.report(problemAt('outOfRange', expression.range, message));
  return null;
}

/** A point in mm. */
export function readPoint({ x, y }: PointSyntax, context: DesignContext): Point | null {
  const right = readLength(x, 'x of a point', 'any', context);
  const up = readLength(y, 'y of a point', 'any', context);
  return right === null || up === null ? null : { x: right, y: up };
}

function readDimension(
  expression: Expression,
  what: string,
  dimension: Dimension,
  example: string,
  context: DesignContext,
): number | null {
  const value = evaluateExpression(expression, context);
  if (!value) return null;
  const read = isPlain(value.dimension) ? readAs(value, dimension, context) : value;
  if (sameDimension(read.dimension, dimension)) return read.amount;
  return wrong(expression, what, dimensionName(dimension), read.dimension, example, context);
}

function wrong(
  { range }: Expression,
  what: string,
  needed: string,
  found: Dimension,
  example: string,
  context: DesignContext,
): null {
  const message = `The ${what} must be ${needed}, and this is ${dimensionName(found)}. Write it like \`${example}\`.`;
  context.report(problemAt('wrongDimension', range, message));
  return null;
}
