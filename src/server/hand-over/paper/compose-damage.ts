import type { Known } from '../../../../shared/call/known.js';
import type {
  Amount,
  DamageLine,
  DamageSection,
  MoneyFact,
} from '../../../../shared/record/damage-section.js';
import { fieldLabel, valueWord } from '../../../../shared/record/field-words/tell-field.js';
import type { JsonObject } from '../../../../shared/record/json-value.js';
import { type AmountSum, amountsOf, sumAmounts, tellSum } from '../../../../shared/report/sum-amounts.js';
import { tellMoney } from '../../../../shared/report/tell-money.js';
import { tellDay } from '../../../../shared/time/tell-time.js';
import type { Block } from './blocks.js';
import { type Composing, composeSection } from './compose-section.js';

/** Two tables to be read at once, the sum under the first; then every line of the section with how it is known. */
export function composeDamage(document: JsonObject, composing: Composing): Block[] {
  const { lines = [], money = [] } = document as DamageSection;
  return [
    ...(lines.length === 0 ? [] : damageTable(lines, composing)),
    ...(money.length === 0 ? [] : moneyTable(money, composing)),
    ...composeSection('damage', document, composing),
  ];
}

function damageTable(lines: readonly DamageLine[], { names }: Composing): Block[] {
  const total = sumAmounts(lines.flatMap(amountsOf));
  return [
    {
      kind: 'table',
      columns: [
        { title: 'What is damaged or lost', share: 0.32 },
        { title: 'Craft', share: 0.12 },
        { title: 'Whose it is', share: 0.22 },
        { title: 'Resting on', share: 0.12 },
        { title: 'US dollars', share: 0.22, align: 'right' },
      ],
      rows: lines.map((line) => [
        line.what ?? (line.of === undefined ? '' : word('/lines/*/of', line.of)),
        (line.craft && names.craft.get(line.craft)) ?? '',
        line.owner ?? '',
        line.basis === undefined ? 'Not said' : word('/lines/*/basis', line.basis),
        tellSum(sumAmounts(amountsOf(line))),
      ]),
      total: [
        `Total of ${lines.length === 1 ? 'one line' : `${lines.length} lines`}`,
        '',
        '',
        '',
        tellSum(total),
      ],
    },
    { kind: 'text', text: SAYING[certaintyOf(total)] },
  ];
}

const SAYING = {
  certain: 'The total counts each line once, material and labour together. Laws count damage differently.',
  open: 'The total counts what has a figure. Where nobody has one yet, the damage is that much and more.',
} as const;

const certaintyOf = ({ unknown }: AmountSum): keyof typeof SAYING => (unknown > 0 ? 'open' : 'certain');

function moneyTable(money: readonly MoneyFact[], { names }: Composing): Block[] {
  return [
    { kind: 'heading', title: fieldLabel('damage', '/money', 'en') ?? 'Money' },
    {
      kind: 'table',
      columns: [
        { title: 'What', share: 0.22 },
        { title: 'For', share: 0.16 },
        { title: 'Day', share: 0.13 },
        { title: 'From, to', share: 0.22 },
        { title: 'Paper', share: 0.14 },
        { title: 'Amount', share: 0.13, align: 'right' },
      ],
      rows: money.map(({ kind, craft, line, day, from, to, paper, amount, exists }) => [
        kind === undefined ? '' : valueWord('damage', '/money/*/kind', kind, 'en'),
        (craft && names.craft.get(craft)) ?? (line && names.damage.get(line)) ?? '',
        tellDay(day ?? ''),
        [from, to].filter(Boolean).join(' to '),
        paper ?? '',
        amount === undefined
          ? exists === undefined
            ? ''
            : word('/money/*/exists', exists)
          : moneyOf(amount.value),
      ]),
    },
  ];
}

const moneyOf = (amount: Amount): string => (typeof amount === 'string' ? 'Not known' : tellMoney(amount));

function word(path: string, { value }: Known<string>): string {
  return valueWord('damage', path, value, 'en');
}
