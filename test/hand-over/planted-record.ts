import { SECTION_SHAPES } from '../../shared/wire/record-sections.js';
import { membersOf, type Shape, type ValueRule } from '../../shared/wire/record-members.js';
import { markNamed } from './search-planted.js';

/** Figures that are searched for by themselves, since no mark can stand in their fields. */
export const FIGURES = { born: '1987-03-14', licence: '40718265', phone: '903-555-0117' };

/** Marks by where they were planted: section and pointer with stars, `#by` for who said it, or any other place. */
export class Plants {
  private readonly places = new Map<string, string>();

  /** A word that stands there and nowhere else. */
  at(place: string): string {
    const mark = markNamed(this.places.size);
    this.places.set(mark, place);
    return mark;
  }

  /** Where the marks were planted, in order of places; a mark that nobody planted is a fault of the test. */
  placesOf(marks: ReadonlySet<string>): string[] {
    return [...marks].map((mark) => this.places.get(mark) ?? `nowhere: ${mark}`).sort();
  }

  get all(): string[] {
    return [...this.places.values()].sort();
  }
}

/**
 * Every section with a mark in each field that takes words, made from the classes by which the service reads them. Every
 * list has one item, `i1`; people have a child `i2` besides, since what is said of a child leaves otherwise.
 */
export function plantedSections(plants: Plants): Record<string, object> {
  const sections: Record<string, object> = Object.fromEntries(
    Object.entries(SECTION_SHAPES).map(([section, shape]) => [section, fill(plants, shape, `${section}:`)]),
  );
  const people = sections['people'] as { people: [{ minor: object; [name: string]: unknown }] };
  const [{ minor, ...adult }] = people.people;
  const child = {
    id: 'i2',
    name: plants.at(CHILD),
    age: fact(9),
    role: fact('passenger'),
    outcome: fact('unhurt'),
    minor,
  };
  return { ...sections, people: { ...people, people: [adult, child] } };
}

export const CHILD = 'the name of a child';

const fact = (value: unknown) => ({ value, known: 'told' });

/** What else than the first that fits: figures that are searched for, and answers that keep to each other. */
const SAID: Readonly<Record<string, (plants: Plants) => unknown>> = {
  'people:/people/*/birthDate': () => FIGURES.born,
  'people:/people/*/age': () => 39,
  'people:/people/*/phone': () => FIGURES.phone,
  'people:/people/*/outcome': () => 'injured',
  'people:/people/*/care': () => 'beyond-first-aid',
  'people:/people/*/role': () => 'operator',
  'rental:/identityPaper': (plants) => `Licence ${plants.at('rental:/identityPaper')} ${FIGURES.licence}`,
  'time-and-place:/states': () => ['TX'],
  'craft:/craft/*/use': () => 'rental',
  'craft:/craft/*/crewSupplied': () => 'no',
  'people:/people/*/employee': () => 'no',
  'craft:/craft/*/fleetCraft': () => 'named by the desk',
};

function fill(plants: Plants, shape: Shape, under: string): object {
  return Object.fromEntries(
    [...membersOf(shape)].map(([name, member]) => {
      const path = `${under}/${name}`;
      if (!('rule' in member)) {
        const isPart = member.kind === 'part';
        const inside = fill(plants, member.shape(), isPart ? path : `${path}/*`);
        return [name, isPart ? inside : [inside]];
      }
      const value = SAID[path]?.(plants) ?? valueOf(plants, member.rule, path);
      return [name, member.kind === 'value' ? value : { ...fact(value), by: plants.at(`${path}#by`) }];
    }),
  );
}

function valueOf(plants: Plants, rule: ValueRule, path: string): unknown {
  if (rule.part !== undefined && rule.schema['oneOf'] === undefined) return fill(plants, rule.part(), path);
  return sampleOf(plants, rule.schema, path);
}

function sampleOf(plants: Plants, schema: Readonly<Record<string, unknown>>, path: string): unknown {
  const { enum: words, oneOf, examples, format, pattern, type, minimum } = schema;
  if (Array.isArray(words)) return words[0];
  if (Array.isArray(examples)) return examples[0];
  if (Array.isArray(oneOf)) return sampleOf(plants, (oneOf[1] ?? {}) as Record<string, unknown>, path);
  if (format === 'date') return '2026-06-13';
  if (format === 'date-time') return '2026-06-13T16:20:00Z';
  if (type === 'boolean') return true;
  if (type === 'integer' || type === 'number') return Math.max(Number(minimum ?? 0), 5);
  if (type === 'array') {
    const { items, minItems } = schema as { items: Record<string, unknown>; minItems?: number };
    return Array.from({ length: minItems ?? 1 }, () => sampleOf(plants, items, path));
  }
  return pattern === undefined ? plants.at(path) : 'i1';
}
