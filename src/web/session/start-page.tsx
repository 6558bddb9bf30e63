import { Link } from 'wouter-preact';
import { Page } from '../look/page.js';
import { common } from '../words/common.js';
import { titles } from '../words/titles.js';

/** Where the desk begins. */
export default function StartPage() {
  return (
    <Page title={common.deskName}>
      <ul class="links">
        <li>
          <Link href="/law/try">{titles.tryLaw}</Link>
        </li>
        <li>
          <Link href="/enrol">{titles.enrol}</Link>
        </li>
      </ul>
    </Page>
  );
}
