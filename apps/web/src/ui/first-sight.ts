/** Takes away what the service sent to be read ahead of the application, once a page of it stands. */
export const endFirstSight = (): void => document.getElementById("first")?.remove();
