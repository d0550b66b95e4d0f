/** The codes that sources speak in, found by their text where no list of them exists at run time. */
import { sourcesIn, textOf } from './tree.ts';

const SPEAKERS = [
  ...['engine', 'reference', 'sums', 'job'].map((name) => `packages/${name}/src`),
  'apps/cli/src',
];
const LITERAL = /'([^']+)'/g;
const COMPARED = /[!=]== '[^']*'/g;

/** Literals of an expression; what a value is compared with is none. */
function literals(text: string): string[] {
  return [...text.replaceAll(COMPARED, '').matchAll(LITERAL)].map((match) => match[1] ?? '');
}

function matches(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].map((match) => match[1] ?? '');
}

/** What stands between an opening bracket and its partner. */
function inside(text: string, opening: number): string {
  let depth = 0;
  for (let at = opening; at < text.length; at++) {
    if ('({['.includes(text[at] ?? '')) depth += 1;
    else if (')}]'.includes(text[at] ?? '')) depth -= 1;
    if (depth === 0) return text.slice(opening + 1, at);
  }
  return text.slice(opening + 1);
}

/** Splits at the commas that stand in no bracket. */
function parts(text: string): string[] {
  const found = [''];
  let depth = 0;
  for (const sign of text) {
    if ('({['.includes(sign)) depth += 1;
    else if (')}]'.includes(sign)) depth -= 1;
    if (sign === ',' && depth === 0) found.push('');
    else found[found.length - 1] += sign;
  }
  return found;
}

/** A value of a member `name: …`, up to the end of its expression. */
function memberTexts(text: string, name: string): string[] {
  return [...text.matchAll(new RegExp(`\\b${name}\\??: `, 'g'))].map((match) => {
    const rest = text.slice(match.index + match[0].length, match.index + 400);
    return rest.split(/[,;})]/, 1)[0] ?? '';
  });
}

/** A family of ids that end in a name: `heat.loss-${name}`; its members are listed where they are made. */
interface Family {
  readonly prefix: string;
  readonly file: string;
  readonly members: RegExp;
}

const FAMILIES: readonly Family[] = [
  {
    prefix: 'heat.loss-',
    file: 'packages/engine/src/heat/surface/working.ts',
    members: /\bgroup\('(\w+)'/g,
  },
  {
    prefix: 'heat.evaporation-',
    file: 'packages/engine/src/heat/surface/evaporation/wind-form.ts',
    members: /massFlux\('(\w+)'\)/g,
  },
  {
    prefix: 'heat.evaporation-flux-',
    file: 'packages/engine/src/heat/surface/evaporation/method.ts',
    members: /^ {2}(\w+): \{ relativeUncertainty/gm,
  },
  {
    prefix: 'water.pad-',
    file: 'packages/engine/src/water/pad/layout.ts',
    members: /readonly part: '([\w-]+)'/g,
  },
];

const DISCIPLINES = [
  'gas',
  'water',
  'heat',
  'air',
  'power',
  'place',
  'chemistry',
  'combustion',
  'handling',
  'inference',
  'properties',
];
const ENGINE_ID = new RegExp(`'((?:${DISCIPLINES.join('|')})\\.[a-z][\\w-]*)'`, 'g');
const COMPOSED_ID = /\bid: `([a-z]+\.[^`$]*)\$\{/g;

/** What stands behind `id:` in the groups and given values of a source: literals, templates and names. */
function recordedTexts(path: string): string[] {
  const text = textOf(path);
  return [...text.matchAll(/\.(?:closeGroup|given)\(\{/g)].map((match) => {
    const body = inside(text, match.index + match[0].length - 1);
    return memberTexts(body, 'id')[0]?.trim() ?? body.trim();
  });
}

/** Prefixes of ids put together from a name, which need a family above. */
export function composedIds(): string[] {
  const engine = sourcesIn('packages/engine/src').flatMap((path) => matches(textOf(path), COMPOSED_ID));
  const recorded = SPEAKERS.flatMap(sourcesIn)
    .flatMap(recordedTexts)
    .flatMap((text) => matches(text, /^`([^`$]*)\$\{/g));
  return [...new Set([...engine, ...recorded])].sort();
}

/** Ids of groups and given values that cannot be read off their source. */
export function hiddenIds(): string[] {
  return SPEAKERS.flatMap(sourcesIn).flatMap((path) =>
    recordedTexts(path)
      .filter((text) => !/[`']/.test(text))
      .map((text) => `${path}: ${text}`),
  );
}

export function familyPrefixes(): string[] {
  return FAMILIES.map(({ prefix }) => prefix).sort();
}

function familyIds(): string[] {
  return FAMILIES.flatMap(({ prefix, file, members }) =>
    matches(textOf(file), members).map((name) => prefix + name),
  );
}

/** Ids of formulas in the engine, and of the groups and given values that a working may show. */
export function stepIds(): string[] {
  const engine = sourcesIn('packages/engine/src').flatMap((path) => matches(textOf(path), ENGINE_ID));
  const recorded = SPEAKERS.flatMap(sourcesIn).flatMap(recordedTexts).flatMap(literals);
  return [...new Set([...engine, ...familyIds(), ...recorded])].sort();
}

/** Which slots the title of a group may have, by the id of the group: the members of `about` where it is closed. */
export function slotsGiven(): (id: string) => readonly string[] {
  const groups = SPEAKERS.flatMap(sourcesIn).flatMap((path) => {
    const text = textOf(path);
    return [...text.matchAll(/\.closeGroup\(\{/g)].map((match) => {
      const body = inside(text, match.index + match[0].length - 1);
      const id = memberTexts(body, 'id')[0] ?? '';
      const about = /\babout: \{([^}]*)\}/.exec(body) ?? /\bconst about = \{([^}]*)\}/.exec(text);
      return { id, slots: matches(about?.[1] ?? '', /(\w+):/g) };
    });
  });
  return (id) =>
    groups
      .filter((group) => group.id.includes(`'${id}'`) || isComposed(group.id, id))
      .flatMap((group) => group.slots);
}

function isComposed(template: string, id: string): boolean {
  const prefix = /`([^`$]*)\$\{/.exec(template)?.[1];
  return prefix !== undefined && id.startsWith(prefix);
}

interface Helper {
  readonly name: string;
  /** Which argument is the reason. */
  readonly at: number;
}

/** Functions that take a reason and make an issue of it. */
function helpers(text: string): Helper[] {
  const declared = [
    ...text.matchAll(/function (\w+)\(/g),
    ...text.matchAll(/const (\w+) = \((?=[^()]*\)(?::[^=]*)? =>)/g),
  ];
  return declared.flatMap((match) => {
    const parameters = parts(inside(text, match.index + match[0].length - 1));
    const at = parameters.findIndex((parameter) => /^\s*reason\b/.test(parameter));
    return at < 0 ? [] : [{ name: match[1] ?? '', at }];
  });
}

function helperReasons(text: string): string[] {
  return helpers(text).flatMap(({ name, at }) =>
    [...text.matchAll(new RegExp(`\\b${name}\\(`, 'g'))].flatMap((call) =>
      literals(parts(inside(text, call.index + call[0].length - 1))[at] ?? ''),
    ),
  );
}

function reasonsOf(path: string): string[] {
  const text = textOf(path)
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/\w\['reason'\]/g, '');
  const named = matches(text, /const reason = ([^;]+);/g).flatMap(literals);
  const members = memberTexts(text, 'reason').flatMap(literals);
  return [...named, ...members, ...helperReasons(text)];
}

/** Every finer reason that an issue or a finding may carry. */
export function reasons(): string[] {
  return [...new Set(SPEAKERS.flatMap(sourcesIn).flatMap(reasonsOf))].sort();
}

/** The words of a union type of codes, such as `'a' | 'b'`, and of the types it names in the same folder. */
export function codesOfType(folder: string, name: string): string[] {
  const text = sourcesIn(folder).map(textOf).join('\n');
  const body = new RegExp(`type ${name} =([^;]+);`).exec(text)?.[1] ?? '';
  const named = [...body.matchAll(/\b([A-Z]\w+Code)\b/g)].flatMap((match) =>
    codesOfType(folder, match[1] ?? ''),
  );
  return [...literals(body), ...named];
}
