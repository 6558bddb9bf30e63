import { DescribeRoute } from '../platform/http/describe-route.js';
import { CRAFT_ID } from './fleet-examples.js';

/** What a kind of thing is called in the API's document. */
interface Names {
  /** `craft`, `station`: also the name of the operations. */
  readonly one: string;
  /** The schema of one; those of what is sent and of a page are named after it. */
  readonly schema: string;
}

const title = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
const PAGE = { 'limit?': '25', 'after?': 'WyJwd2MgMDAwMDAwMDciLCJhMSJd' };
const NO_QUERY = { 422: 'The query cannot be used.' };
const params = { id: CRAFT_ID };
const notThere = ({ one }: Names) => ({ 404: `There is no such ${one}.` });

export const DescribeList = ({ one, schema }: Names): MethodDecorator =>
  DescribeRoute({
    operationId: `list${schema}`,
    summary: `Each ${one} in use, by name; with retired=yes those no longer in use too`,
    query: { ...PAGE, 'retired?': 'yes' },
    answer: `${schema}Page`,
    refuses: NO_QUERY,
  });

export const DescribeRead = (names: Names): MethodDecorator =>
  DescribeRoute({
    operationId: `read${names.schema}`,
    summary: `One ${names.one}; its ETag is what a change names in If-Match`,
    params,
    answer: names.schema,
    refuses: notThere(names),
  });

export const DescribeVersions = (names: Names): MethodDecorator =>
  DescribeRoute({
    operationId: `list${names.schema}Versions`,
    summary: `Every version of one ${names.one}, with who entered it, the newest first`,
    params,
    query: PAGE,
    answer: 'KeptVersionPage',
    refuses: { ...notThere(names), ...NO_QUERY },
  });

export const DescribeCreate = ({ one, schema }: Names, conflict?: string): MethodDecorator =>
  DescribeRoute({
    operationId: `create${schema}`,
    summary: `${title(one)} added; a retry with the same key adds no second one`,
    body: `${schema}Details`,
    answer: schema,
    status: 201,
    once: true,
    refuses: conflict === undefined ? {} : { 409: conflict },
  });

export const DescribeReplace = (names: Names, conflict?: string): MethodDecorator =>
  DescribeRoute({
    operationId: `replace${names.schema}`,
    summary: `${title(names.one)} changed: everything is sent, and what is left out is no longer said`,
    params,
    body: `${names.schema}Details`,
    answer: names.schema,
    versioned: true,
    refuses: { ...notThere(names), ...(conflict === undefined ? {} : { 409: conflict }) },
  });
