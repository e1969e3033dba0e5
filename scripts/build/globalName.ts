/** The bundle's one global. The trailing underscore keeps it out of the names that a page may call. */
export const GLOBAL_NAME = 'Poursmith_';
