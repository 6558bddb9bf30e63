/**
 * Every USPS code that a rule pack may carry: the states, the District of Columbia and the territories, which
 * 33 CFR 173.3 counts as states, and `US` for the federal rule.
 */
export const JURISDICTION_CODES: ReadonlySet<string> = new Set(
  (
    'US AK AL AR AS AZ CA CO CT DC DE FL GA GU HI IA ID IL IN KS KY LA MA MD ME MI MN MO MP MS MT ' +
    'NC ND NE NH NJ NM NV NY OH OK OR PA PR RI SC SD TN TX UT VA VI VT WA WI WV WY'
  ).split(' '),
);
