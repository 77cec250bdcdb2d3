/** Arithmetic with dimensions. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Call, Expression, Name, Operation } from '../../../grammar/tree/syntax-nodes.ts';
import { isKnownFunction, knownFunctions } from '../../../grammar/vocabulary/tokens.ts';
import { nearestWord } from '../../../grammar/problems/nearest-word.ts';
import { radians } from '../../geometry/point.ts';
import type { NumberContext } from '../design-context.ts';
import {
  angleDimension,
  dimensionName,
  isPlain,
  lengthDimension,
  millimetresIn,
  plainNumber,
  productDimension,
  quantityOf,
  rootDimension,
  sameDimension,
} from './quantity.ts';
import type { Dimension, Quantity } from './quantity.ts';

/** The value of an expression; null where it has none, which is reported here or where its name is broken. */
export function evaluateExpression(expression: Expression, context: NumberContext): Quantity | null {
  switch (expression.kind) {
    case 'number':
      return expression.unit === 'unknown'
        ? null
        : finite(quantityOf(expression.amount, expression.unit), expression, context);
    case 'name':
      return namedNumber(expression.name, context);
    case 'negation': {
      const operand = evaluateExpression(expression.operand, context);
      return operand && { ...operand, amount: -operand.amount };
    }
    case 'operation':
      return evaluateOperation(expression, context);
    case 'call':
      return evaluateCall(expression, context);
  }
}

function namedNumber({ text, range }: Name, context: NumberContext): Quantity | null {
  const value = context.numberNamed(text);
  return value && context.isFromOtherFile(text) && isPlain(value.dimension) ? { ...value, inDoubt: range } : value;
}

function evaluateOperation(expression: Operation, context: NumberContext): Quantity | null {
  const left = evaluateExpression(expression.left, context);
  const right = evaluateExpression(expression.right, context);
  if (!left || !right) return null;
  const { operator } = expression;
  if (operator === '*' || operator === '/') {
    const amount = operator === '*' ? left.amount * right.amount : left.amount / right.amount;
    const dimension = productDimension(left.dimension, right.dimension, operator === '*' ? 1 : -1);
    return finite({ amount, dimension, ...doubtOf([left, right]) }, expression, context);
  }
  const [first, second] = alike([left, right], context);
  if (!first || !second) {
    const [one, other] = [dimensionName(left.dimension), dimensionName(right.dimension)];
    const action = operator === '+' ? `${one} and ${other} cannot be added` : `${other} cannot be taken from ${one}`;
    context.report(problemAt('wrongDimension', expression.range, `${capital(action)}. Use two of one kind.`));
    return null;
  }
  const amount = operator === '+' ? first.amount + second.amount : first.amount - second.amount;
  return finite({ amount, dimension: first.dimension, ...doubtOf([first, second]) }, expression, context);
}

/** The doubt that one of the quantities brings into what is computed from them. */
const doubtOf = (quantities: readonly Quantity[]): Pick<Quantity, 'inDoubt'> => {
  const inDoubt = quantities.find((quantity) => quantity.inDoubt)?.inDoubt;
  return inDoubt ? { inDoubt } : {};
};

/** The quantities in one dimension; a plain number beside a length or an angle is one. Empty where they do not agree. */
function alike(quantities: readonly Quantity[], context: NumberContext): readonly Quantity[] {
  const measured = quantities.find(({ dimension }) => !isPlain(dimension))?.dimension ?? plainNumber;
  const read = quantities.map((quantity) =>
    isPlain(quantity.dimension) ? readAs(quantity, measured, context) : quantity,
  );
  return read.every(({ dimension }) => sameDimension(dimension, measured)) ? read : [];
}

/** A plain number read in its place: as a length in the file's units, or in degrees. */
export function readAs(quantity: Quantity, dimension: Dimension, context: NumberContext): Quantity {
  if (sameDimension(dimension, lengthDimension)) {
    if (quantity.inDoubt) context.report(withoutUnit(quantity.inDoubt));
    return { amount: quantity.amount * millimetresIn[context.units], dimension };
  }
  if (sameDimension(dimension, angleDimension)) return { amount: quantity.amount, dimension };
  return quantity;
}

const withoutUnit = (range: SourceRange): Problem =>
  problemAt(
    'lengthWithoutUnit',
    range,
    'This number comes from another file and has no unit, so it says no length here. Give it its unit there, as in `let side = 40mm`.',
  );

function evaluateCall(call: Call, context: NumberContext): Quantity | null {
  const name = call.name.text;
  if (!isKnownFunction(name)) {
    const near = nearestWord(name, Object.keys(knownFunctions));
    const advice = near ? `Did you mean \`${near}\`?` : `Use one of ${Object.keys(knownFunctions).join(', ')}.`;
    context.report(problemAt('unknownName', call.name.range, `There is no function \`${name}\`. ${advice}`));
    return null;
  }
  const values = call.values.map((value) => evaluateExpression(value, context));
  const known = values.filter((value) => value !== null);
  const first = known[0];
  if (!first || known.length < values.length) return null;
  if (name === 'min' || name === 'max') return extreme(name, known, call, context);
  if (known.length > 1) {
    const second = call.values[1] ?? call;
    context.report(problemAt('unexpectedWord', second.range, `\`${name}\` takes one value. Take the others out.`));
    return null;
  }
  return name === 'sqrt' ? squareRoot(first, call, context) : circular(name, first, call, context);
}

function extreme(
  name: 'min' | 'max',
  values: readonly Quantity[],
  call: Call,
  context: NumberContext,
): Quantity | null {
  const read = alike(values, context);
  const first = read[0];
  if (!first) {
    const message = `\`${name}\` compares values of one kind only. Give all of them as lengths, angles or plain numbers.`;
    context.report(problemAt('wrongDimension', call.range, message));
    return null;
  }
  const amounts = read.map(({ amount }) => amount);
  const amount = name === 'min' ? minimum(amounts) : maximum(amounts);
  return { amount, dimension: first.dimension, ...doubtOf(read) };
}

function squareRoot({ amount, dimension }: Quantity, call: Call, context: NumberContext): Quantity | null {
  const root = rootDimension(dimension);
  if (!root) {
    const message = `The square root of ${dimensionName(dimension)} measures nothing. Take it of a plain number or an area.`;
    context.report(problemAt('wrongDimension', call.range, message));
    return null;
  }
  return finite({ amount: Math.sqrt(amount), dimension: root }, call, context);
}

function circular(name: string, value: Quantity, call: Call, context: NumberContext): Quantity | null {
  const angle = isPlain(value.dimension) ? readAs(value, angleDimension, context) : value;
  if (!sameDimension(angle.dimension, angleDimension)) {
    const message = `\`${name}\` takes an angle, not ${dimensionName(value.dimension)}. Write it like \`${name}(30deg)\`.`;
    context.report(problemAt('wrongDimension', call.values[0]?.range ?? call.range, message));
    return null;
  }
  const amount = circularValue(name, angle.amount);
  return finite({ amount, dimension: plainNumber }, call, context);
}

/** Sine, cosine or tangent of an angle in degrees, exact at the quarter turns. */
function circularValue(name: string, angle: number): number {
  const quarter = ((angle % 360) + 360) % 360;
  const sine = quarter % 180 === 0 ? 0 : Math.sin(radians(angle));
  const cosine = quarter % 180 === 90 ? 0 : Math.cos(radians(angle));
  if (name === 'sin') return sine;
  return name === 'cos' ? cosine : sine / cosine;
}

function finite(quantity: Quantity, expression: Expression, context: NumberContext): Quantity | null {
  if (Number.isFinite(quantity.amount)) return quantity;
  context.report(problemAt('notANumber', expression.range, 'This comes to no number. Check for a division by zero.'));
  return null;
}

/** π as a plain number; written `pi`. */
export const piNumber: Quantity = { amount: Math.PI, dimension: plainNumber };

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
