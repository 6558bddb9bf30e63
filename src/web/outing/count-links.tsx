import { Link } from 'wouter-preact';
import { closingCount as say } from '../words/closing-count.js';

export function CountLinks() {
  return (
    <p class="links-line unprinted">
      <Link href="/out-and-back">{say.toList}</Link>
    </p>
  );
}
