import { Button } from '../look/button.js';
import { DefinitionRows, type Row } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { call as say } from '../words/call.js';
import { common } from '../words/common.js';
import type { Ternary } from '../../../shared/kernel/truth.js';
import { STEPS, type CallDraft, type Step } from './call-draft.js';
import { aboutWhere, tellWhere } from './tell-where.js';
import type { CallHands } from './use-call.js';
import type { Choices } from './use-choices.js';

/** Everything already said, in the order in which it is asked, each with a way to change it. */
export function SaidSoFar({
  hands,
  draft,
  choices,
}: {
  hands: CallHands;
  draft: CallDraft;
  choices: Choices;
}) {
  const rows = STEPS[draft.entry]
    .filter((step) => draft.passed.includes(step))
    .flatMap((step) =>
      rowOf(step, draft, choices).map((row) => ({ ...row, action: changeOf(step, row, hands) })),
    );
  const pictures: Row[] =
    draft.photographs > 0
      ? [{ term: say.photographs.term, value: say.photographs.count(draft.photographs) }]
      : [];
  return rows.length + pictures.length === 0 ? null : <DefinitionRows rows={[...rows, ...pictures]} />;
}

function changeOf(step: Step, { term }: Row, { askAgain }: CallHands) {
  return (
    <Button look="plain" label={`${say.change}: ${term}`} onPress={() => askAgain(step)}>
      {say.change}
    </Button>
  );
}

function rowOf(step: Step, { answers }: CallDraft, choices: Choices): Row[] {
  const unknown = <Ternaried value="unknown" />;
  switch (step) {
    case 'craft': {
      const names = answers.craft?.value ?? [];
      const colours = choices.craft
        .filter(({ unitName }) => names.includes(unitName))
        .flatMap((one) => one.colours);
      return [
        {
          term: say.craft.term,
          value: names.length === 0 ? unknown : names.join(', '),
          ...(colours.length > 0 && { about: [...new Set(colours)].join(', ') }),
        },
      ];
    }
    case 'where': {
      const where = answers.where?.value;
      return [
        where === undefined
          ? { term: say.where.term, value: unknown }
          : { term: say.where.term, value: tellWhere(where), about: aboutWhere(where) },
      ];
    }
    case 'accounted': {
      const people = answers.people?.value;
      return [
        {
          term: say.people.term,
          value: <Ternaried value={answers.accounted?.value ?? 'unknown'} />,
          ...(people !== undefined && { about: say.people.count(people) }),
        },
      ];
    }
    case 'hurt':
      return [{ term: say.hurt.term, value: <Ternaried value={answers.hurt?.value ?? 'unknown'} /> }];
    case 'happened': {
      const kind = answers.happened?.value;
      const plain = kind === undefined ? undefined : (say.happened.kinds[kind ?? ''] ?? say.happened.none);
      const said = answers.said?.value;
      return [
        {
          term: say.happened.term,
          value: plain ?? said ?? unknown,
          ...(plain !== undefined && said !== undefined && { about: said }),
        },
      ];
    }
    case 'caller':
      return [
        {
          term: say.caller.term,
          value: answers.callerName?.value ?? unknown,
          about: [answers.callBack?.value, answers.when?.value].filter(Boolean).join('; '),
        },
      ];
  }
}

function Ternaried({ value }: { value: Ternary }) {
  return (
    <>
      <Sign of={value} />
      {common.answer[value]}
    </>
  );
}
