import { isConduct } from '../../../shared/determination/duty-kinds.js';
import { DutyView } from '../determination/duty-view.js';
import { Section } from '../look/section.js';
import { useNow } from '../look/use-now.js';
import { reportable } from '../words/reportable.js';
import type { Matter } from './use-matter.js';

const say = reportable.conduct;

/** What the law has done or kept, such as a test for alcohol within two hours: nothing is signed or filed for it. */
export function ConductDuties({ matter }: { matter: Matter }) {
  const now = useNow();
  const all = matter.determined.determination.duties.filter(isConduct);
  const due = all.filter(({ outcome }) => outcome !== 'not-required');
  if (all.length === 0) return null;
  return (
    <Section title={say.title}>
      <p class="quiet">{say.lead}</p>
      {due.map((duty) => (
        <DutyView key={duty.id} duty={duty} now={now} />
      ))}
      {due.length < all.length && <p>{say.none(all.length - due.length)}</p>}
    </Section>
  );
}
