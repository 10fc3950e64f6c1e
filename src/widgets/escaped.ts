/** Text safe to stand in HTML, in an attribute too. */
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (mark) => `&#${mark.charCodeAt(0)};`);
