type Letter = { readonly subject: string; readonly body: string };

/** Never a secret in a subject. */
export const invitationLetter = (organization: string, link: string, days: number): Letter => ({
  subject: "An invitation",
  body: `You are invited to join ${organization}.\n\n${link}\n\nThe link works once, for ${days} days. If you did not expect this letter, do nothing.\n`,
});

export const newPasswordLetter = (link: string): Letter => ({
  subject: "A new password",
  body: `Somebody asked for a new password for the account with this address. If it was you, choose one here:\n\n${link}\n\nThe link works once, for one hour. If it was not you, do nothing: your password stays as it is.\n`,
});

export const passwordChangedLetter = (address: string): Letter => ({
  subject: "Your password was changed",
  body: `The password of your account was changed, and every other device was signed out.\n\nIf it was not you, ask for a new password by mail at once: ${address}/forgotten-password\n`,
});
