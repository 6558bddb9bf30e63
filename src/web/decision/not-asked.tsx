import { Section } from '../look/section.js';
import { reportable } from '../words/reportable.js';
import { nameDuty } from './compare-determinations.js';
import { type AskedQuestion, questionKey } from './list-questions.js';
import { QuestionItem } from './question-list.js';
import type { Matter } from './use-matter.js';
import type { WhatIf } from './use-what-if.js';

const say = reportable.notAsked;

/** What nobody has stated and could call a duty on another matter up, each to be answered where it stands. */
export function NotAsked({
  matter,
  whatIf,
  asked,
}: {
  matter: Matter;
  whatIf: WhatIf;
  /** What the duties ask already. */
  asked: readonly AskedQuestion[];
}) {
  const known = new Set(asked.map(questionKey));
  const open = new Map<string, AskedQuestion>();
  for (const { duty, ...question } of matter.determined.determination.notAsked ?? []) {
    const key = questionKey(question);
    if (known.has(key)) continue;
    const before = open.get(key)?.duties ?? [];
    const duties = [...new Set([...before, nameDuty(duty, null)])];
    open.set(key, { ...question, anchor: open.get(key)?.anchor ?? `not-asked-${open.size + 1}`, duties });
  }
  if (open.size === 0) return null;
  return (
    <Section title={say.title}>
      <p class="quiet">{say.lead}</p>
      <ol class="asked">
        {[...open.values()].map((question) => (
          <li key={question.anchor}>
            <QuestionItem
              matter={matter}
              question={question}
              whatIf={whatIf}
              onSaved={() => undefined}
              soughtTimes={0}
            />
          </li>
        ))}
      </ol>
    </Section>
  );
}
