import { useState } from 'preact/hooks';
import type { Contact } from '../../../shared/record/account-sections.js';
import { pressedNow } from '../device/pressed-now.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { useSession } from '../session/session.js';
import { givenInRecord } from '../words/en/officer.js';
import { officer as sayOfficer, otherOperator as say } from '../words/officer.js';
import { GaveNote, GiveSection } from './give-section.js';
import { ourCraftOf } from './our-craft.js';
import { useGive } from './use-give.js';
import type { WholeRecord } from './use-whole-record.js';

/** Those to whom 46 U.S.C. 2303(a)(2) gives it. */
const RECEIVERS = ['other-operator', 'hurt', 'owner'] as const;

/** To whom it was given, into the record's section on contacts: who they are, and of the sheet only that it was given. */
export function GiveOther({ whole }: { whole: WholeRecord }) {
  const me = useSession().me;
  const [to, setTo] = useState<(typeof RECEIVERS)[number]>();
  const [name, setName] = useState('');
  const [looked, setLooked] = useState(false);
  const { gave, give } = useGive(whole.record.id);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (to === undefined) return;
    const { record, sections, fleet, asOf } = whole;
    const craft = ourCraftOf(sections, fleet).map((one) => one.name);
    const contact: Contact = {
      id: `sheet-${crypto.randomUUID()}`,
      at: pressedNow(),
      party: 'other-party',
      direction: 'out',
      channel: givenInRecord.channel,
      summary: givenInRecord.summary(givenInRecord.to[to], craft.join(', '), record.version, asOf),
      ...(name.trim() !== '' && { name: name.trim() }),
      ...(me !== null && { by: me.name }),
    };
    if (!(await give('contacts', { contacts: [contact] }, 'sheet for the other operator'))) return;
    setTo(undefined);
    setName('');
    setLooked(false);
  };
  return (
    <GiveSection title={say.give.title} lead={sayOfficer.give.lead}>
      <form class="form" onSubmit={(event) => void submit(event)} noValidate>
        <Choice
          legend={say.give.to}
          value={to}
          options={RECEIVERS.map((value) => ({ value, label: say.give.tos[value] }))}
          onChoose={setTo}
          error={looked && to === undefined ? say.give.lacksTo : null}
        />
        <Field label={say.give.name} hint={say.give.nameHint} value={name} onInput={setName} />
        <GaveNote gave={gave} />
        <Button type="submit" look="main">
          {sayOfficer.give.submit}
        </Button>
      </form>
    </GiveSection>
  );
}
