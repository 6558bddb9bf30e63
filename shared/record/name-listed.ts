interface Listed {
  readonly id: string;
}

/**
 * What an item of a list is called: by its name, else by its place in the list, as an id says nothing to anybody.
 * @example nameListed('Person', people, people[1]) // 'Person 2'
 */
export function nameListed(
  word: string,
  list: readonly Listed[],
  { id, name }: Listed & { name?: string | undefined },
): string {
  return name ?? `${word} ${list.findIndex((one) => one.id === id) + 1}`;
}
