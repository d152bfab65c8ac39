/** A program in the CPLEX LP format, which most solvers read. */
import type { Program, Row, Term } from './program.ts';

/** Some readers refuse lines over 510 characters. */
const TERMS_PER_LINE = 12;

/** Names are made by us: letters, digits and underscores, and never of the form e12, which reads as a number. */
function sum(terms: readonly Term[], names: readonly string[]): string {
  const parts = terms
    .filter(([, factor]) => factor !== 0)
    .map(([at, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${names[at]}`);
  // An empty sum has to name a variable.
  if (parts.length === 0) return `0 ${names[0]}`;
  const lines: string[] = [];
  for (let from = 0; from < parts.length; from += TERMS_PER_LINE) lines.push(parts.slice(from, from + TERMS_PER_LINE).join(' '));
  return lines.join('\n  ');
}

export function lpText({ variables, objective, rows }: Program): string {
  const names = variables.map(({ name }) => name);
  const line = ({ name, terms, sense, right }: Row): string => ` ${name}: ${sum(terms, names)} ${sense} ${right}`;
  return [
    'Minimize',
    ` total: ${sum(objective, names)}`,
    'Subject To',
    ...rows.map(line),
    'Bounds',
    ...variables.map(({ name, most }) => ` 0 <= ${name}${most === null ? '' : ` <= ${most}`}`),
    'General',
    ...variables.filter(({ whole }) => whole).map(({ name }) => ` ${name}`),
    'End',
    '',
  ].join('\n');
}
