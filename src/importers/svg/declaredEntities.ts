import { IMPORT_LIMITS } from '../importLimits';

/** `<!ENTITY name "plain text">`: no other entity, no element, nothing from another file. */
const PLAIN = /<!ENTITY\s+([A-Za-z_][\w.-]{0,99})\s+(?:"([^"&<%]{0,1000})"|'([^'&<%]{0,1000})')\s*>/g;

/**
 * Lets a reader of XML know the names that a document type declares for plain text, as some drawing programs do for
 * namespaces. `exceeded` is called when they are used for more text than any drawing needs.
 */
export const declaredEntities = (doctype: string, entities: Record<string, string>, exceeded: () => void): void => {
  let put = 0;
  for (const [, name = '', double, single] of doctype.matchAll(PLAIN)) {
    const value = double ?? single ?? '';
    Object.defineProperty(entities, name, {
      configurable: true,
      get: () => {
        put += value.length;
        if (put <= IMPORT_LIMITS.expansion) return value;
        exceeded();
        return '';
      },
    });
  }
};
