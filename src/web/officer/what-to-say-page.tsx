import './what-to-say.css';
import { Button } from '../look/button.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { common } from '../words/common.js';
import { whatToSay as say } from '../words/what-to-say.js';

/** The card for staff: what is said after an accident and what is not. It asks the service nothing, so that it opens without signal. */
export default function WhatToSayPage() {
  return (
    <Page
      title={say.title}
      lead={say.lead}
      actions={
        <Button look="main" onPress={() => print()}>
          {common.print}
        </Button>
      }
    >
      <div class="card">
        <p class="card-first">
          {common.caution.help} {say.first}
        </p>
        <div class="card-halves">
          <Half of="yes" words={say.yes} />
          <Half of="no" words={say.no} />
        </div>
        <Section title={say.asked.title}>
          <dl class="rows card-asked">
            {say.asked.rows.map(({ who, answer }) => (
              <div class="row" key={who}>
                <dt>{who}</dt>
                <dd>{answer}</dd>
              </div>
            ))}
          </dl>
        </Section>
        <Section title={say.write.title}>
          <ul class="card-lines">
            {say.write.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p class="card-number">{say.manager}</p>
          <p>
            <strong>{say.not}</strong>
          </p>
        </Section>
      </div>
    </Page>
  );
}

function Half({ of, words }: { of: 'yes' | 'no'; words: typeof say.yes }) {
  return (
    <Section
      title={words.title}
      aside={
        <span class="card-sign">
          <Sign of={of} />
          {common.answer[of]}
        </span>
      }
    >
      {words.parts.map(({ title, lines }) => (
        <div class="card-part" key={title}>
          <h3>{title}</h3>
          <ul class="card-lines">
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      ))}
    </Section>
  );
}
