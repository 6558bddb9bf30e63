import type { EditConflict } from '../../../shared/record/merge-edits.js';
import { takeSide } from '../../../shared/record/merge-edits.js';
import type { JsonValue } from '../../../shared/record/json-value.js';
import { Button } from '../look/button.js';
import { tellHowKnown, tellRecorded } from '../look/tell-recorded.js';
import { Section } from '../look/section.js';
import { record as say } from '../words/record.js';
import { keepDraft } from './draft-store.js';
import { fullLabel } from './section-label.js';
import type { SectionDraft } from './section-draft.js';

/** What two people wrote otherwise: mine and theirs side by side, and the person keeps either, or both of two texts. */
export function ConflictView({ draft, timeZone }: { draft: SectionDraft; timeZone: string }) {
  const { open = [], bothKept = [] } = draft;
  if (open.length + bothKept.length === 0) return null;
  const settle = (conflict: EditConflict, side: 'mine' | 'theirs' | 'both'): void => {
    const others = (list: readonly EditConflict[]) => list.filter(({ path }) => path !== conflict.path);
    const { open: before, ...rest } = draft;
    const left = others(before ?? []);
    keepDraft({
      ...rest,
      ...(left.length > 0 && { open: left }),
      bothKept: others(bothKept),
      document: side === 'both' ? draft.document : takeSide(draft.document, conflict, side),
    });
  };
  return (
    <Section title={say.conflict.title}>
      <p>{open.length > 0 ? say.conflict.choose : say.conflict.kept}</p>
      <ul class="conflicts">
        {[...open, ...bothKept].map((conflict) => (
          <li key={conflict.path} data-path={`conflict${conflict.path}`}>
            <h3>{fullLabel(draft.section, draft.document, conflict.path) || conflict.path}</h3>
            <dl class="sides">
              <Side
                draft={draft}
                path={conflict.path}
                term={say.conflict.mine}
                value={conflict.mine}
                timeZone={timeZone}
              />
              <Side
                draft={draft}
                path={conflict.path}
                term={say.conflict.theirs}
                value={conflict.theirs}
                timeZone={timeZone}
              />
            </dl>
            <p class="buttons">
              <Button onPress={() => settle(conflict, 'mine')}>{say.conflict.keepMine}</Button>
              <Button onPress={() => settle(conflict, 'theirs')}>{say.conflict.keepTheirs}</Button>
              {!open.includes(conflict) && (
                <Button onPress={() => settle(conflict, 'both')}>{say.conflict.keepBoth}</Button>
              )}
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}

interface SideProps {
  readonly draft: SectionDraft;
  readonly path: string;
  readonly term: string;
  readonly value: JsonValue;
  readonly timeZone: string;
}

function Side({ draft: { section }, path, term, value, timeZone }: SideProps) {
  const how = tellHowKnown(value, timeZone);
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        {tellRecorded(value, { section, path, timeZone }) || say.conflict.nothing}
        {how !== undefined && <small>{how}</small>}
      </dd>
    </div>
  );
}
