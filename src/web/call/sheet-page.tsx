import './sheet.css';
import { Button } from '../look/button.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { call as say } from '../words/call.js';
import { common } from '../words/common.js';
import { useChoices } from './use-choices.js';

/** The blank sheet for the drawer: what is asked, in the order of the call page, and the numbers of the stations. */
export default function SheetPage() {
  const { stations } = useChoices();
  return (
    <Page
      title={say.paper.title}
      lead={say.paper.lead}
      actions={
        <Button look="main" onPress={() => print()}>
          {common.print}
        </Button>
      }
    >
      <p class="sheet-first">
        {common.caution.help} {common.caution.call911}. {common.caution.vhf}.
      </p>
      <Section title={say.paper.numbers}>
        {stations.length === 0 && <p class="empty">{say.paper.noNumbers}</p>}
        {stations.map(({ id, name, address, numbers }) => (
          <div class="sheet-station" key={id}>
            <h3>{name}</h3>
            {address !== null && <p>{address}</p>}
            <ul>
              {numbers.map((number) => (
                <li key={number.id}>
                  {number.name}: <strong>{[number.phone, number.channel].filter(Boolean).join(', ')}</strong>{' '}
                  {number.note}
                </li>
              ))}
            </ul>
          </div>
        ))}
      </Section>
      <ol class="sheet-lines">
        {say.paper.fields.map((field) => (
          <li key={field}>{field}</li>
        ))}
      </ol>
    </Page>
  );
}
