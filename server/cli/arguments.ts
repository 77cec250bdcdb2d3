/** Command-line arguments of one verb, read with what Node brings and refused in our words. */
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { WrongUsage } from './wrong-usage.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

/** The options and the plain arguments of `args`. Unknown options and missing values throw WrongUsage. */
export function readArguments<Known extends Options>(args: readonly string[], options: Known) {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    return { values, positionals };
  } catch (error) {
    throw error instanceof TypeError ? new WrongUsage(firstSentence(error.message)) : error;
  }
}

/** The one file a verb works on, or WrongUsage. */
export function onlyFile(positionals: readonly string[]): string {
  const [file, ...others] = positionals;
  if (file === undefined) throw new WrongUsage('name the .lap file, or “-” for standard input');
  if (others.length > 0) throw new WrongUsage(`one file at a time, but ${positionals.length} were given`);
  return file;
}

/** `value` if it is one of `choices`, the fallback if none was given, else WrongUsage. */
export function oneOf<Choice extends string>(
  option: string,
  value: string | undefined,
  choices: readonly Choice[],
  fallback: Choice,
): Choice {
  if (value === undefined) return fallback;
  const choice = choices.find((each) => each === value);
  if (choice === undefined) throw new WrongUsage(`${option} ${value}: choose ${anyOf.format(choices)}`);
  return choice;
}

const anyOf = new Intl.ListFormat('en', { type: 'disjunction' });

const firstSentence = (message: string): string => message.split('. ')[0] ?? message;
