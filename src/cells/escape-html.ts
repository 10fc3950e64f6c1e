/** Text as HTML shows it, in elements and in quoted attributes alike. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (sign) => entities[sign]!);

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
