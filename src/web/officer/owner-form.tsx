import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { officer as say } from '../words/officer.js';
import { GaveNote } from './give-section.js';
import { asInRecord, ourCraftOf } from './our-craft.js';
import { useGive } from './use-give.js';
import type { WholeRecord } from './use-whole-record.js';

/** The house itself, as it was written here last: the same on every sheet, and nothing about a guest. */
const KEPT_AS = 'desk-owner';

interface Owner {
  readonly name: string;
  readonly address: string;
}

/** Who owns our craft, where the record does not say: both sheets begin with that. */
export function OwnerForm({ whole: { record, sections, fleet } }: { whole: WholeRecord }) {
  const [owner, setOwner] = useState<Owner>(ownerWrittenLast);
  const [looked, setLooked] = useState(false);
  const { gave, give } = useGive(record.id);
  const without = ourCraftOf(sections, fleet).filter((craft) => craft.owner === null);
  if (without.length === 0) return null;
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (owner.name.trim() === '') return;
    const said = {
      ownerName: owner.name.trim(),
      ...(owner.address.trim() !== '' && { ownerContact: owner.address.trim() }),
    };
    const craft = without.map((one) => ({ ...asInRecord(one), ...said }));
    if (await give('craft', { craft }, 'owner')) localStorage.setItem(KEPT_AS, JSON.stringify(owner));
  };
  return (
    <form class="form unprinted" onSubmit={(event) => void submit(event)} noValidate>
      <p>{say.owner.lead}</p>
      <Field
        label={say.owner.name}
        value={owner.name}
        onInput={(name) => setOwner({ ...owner, name })}
        error={looked && owner.name.trim() === '' ? say.owner.lacksName : null}
      />
      <Field
        label={say.owner.address}
        value={owner.address}
        onInput={(address) => setOwner({ ...owner, address })}
      />
      {gave === 'not-kept' && <GaveNote gave={gave} />}
      <Button type="submit">{say.owner.save}</Button>
    </form>
  );
}

function ownerWrittenLast(): Owner {
  const nobody = { name: '', address: '' };
  return { ...nobody, ...(JSON.parse(localStorage.getItem(KEPT_AS) ?? '{}') as Partial<Owner>) };
}
