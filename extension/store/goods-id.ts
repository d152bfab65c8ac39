/** Ids of what came to the kit with a find begin so: they lead back to it. */
export const beginningOf = (find: string): string => `${find}/`;
