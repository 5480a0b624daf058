import { Button, type ButtonProps } from "@mantine/core";
import { createLink } from "@tanstack/react-router";
import type { AnchorHTMLAttributes, Ref } from "react";

type Props = ButtonProps &
  Omit<AnchorHTMLAttributes<HTMLAnchorElement>, keyof ButtonProps> & {
    readonly ref?: Ref<HTMLAnchorElement>;
  };

const AnchorButton = (props: Props) => <Button component="a" {...props} />;

/** A link that looks like a button; its address and parameters are checked as a `Link`'s are. */
export const LinkButton = createLink(AnchorButton);
