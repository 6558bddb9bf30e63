import type { PageProps } from '../app/page-route.js';
import { useAskAll } from '../ask/use-ask-all.js';
import { KeptPage } from '../lists/kept-page.js';
import { places } from '../words/en/places.js';
import { policySpecs } from './place-specs.js';

const { policies: say } = places;
const TOUCHES = ['/api/policies'];

/** A policy, or the form that adds one. */
export default function PolicyPage({ params: { id = '' } }: PageProps) {
  // Retired ones as well: a policy of last year names them.
  const { data = [] } = useAskAll<{ id: string; unitName: string }>('/api/craft?retired=yes');
  return (
    <KeptPage
      key={id}
      list="/api/policies"
      id={id}
      specs={policySpecs(data.map(({ id: value, unitName }) => ({ value, label: unitName })))}
      nameOf={({ insurer, number }) => `${insurer as string} ${number as string}`}
      adding={say.adding}
      back={{ href: '/policies', words: say.title }}
      own="/policies"
      touches={TOUCHES}
    />
  );
}
