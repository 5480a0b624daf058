import type { Account } from "@evenhand/shared/http/accounts";
import { Button, Menu, useMantineColorScheme, type MantineColorScheme } from "@mantine/core";
import { IconCheck, IconChevronDown } from "@tabler/icons-react";
import { useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate } from "@tanstack/react-router";
import { call } from "../service/client";
import { useText } from "../strings/text";
import { forgetDevice } from "../offline/forget";

const schemes = ["auto", "light", "dark"] as const satisfies readonly MantineColorScheme[];

const SchemeItems = () => {
  const t = useText();
  const { colorScheme, setColorScheme } = useMantineColorScheme();
  return (
    <>
      <Menu.Label>{t("app.scheme")}</Menu.Label>
      {schemes.map((scheme) => (
        <Menu.Item
          key={scheme}
          onClick={() => setColorScheme(scheme)}
          rightSection={colorScheme === scheme ? <IconCheck size={16} aria-hidden="true" /> : null}
          aria-current={colorScheme === scheme}
        >
          {t(`app.scheme.${scheme}`)}
        </Menu.Item>
      ))}
    </>
  );
};

export const AccountMenu = ({ account }: { readonly account: Account | null }) => {
  const t = useText();
  const queries = useQueryClient();
  const navigate = useNavigate();
  const leave = async (): Promise<void> => {
    await call("sessions.end");
    await forgetDevice();
    queries.clear();
    await navigate({ to: "/sign-in" });
  };
  return (
    <Menu position="bottom-end" width={240} keepMounted={false}>
      <Menu.Target>
        <Button
          variant="subtle"
          color="gray"
          rightSection={<IconChevronDown size={16} aria-hidden="true" />}
          style={{ color: "var(--ink-2)" }}
        >
          {account ? account.name : t("app.scheme")}
        </Button>
      </Menu.Target>
      <Menu.Dropdown>
        {account && (
          <>
            <Menu.Label>{account.email}</Menu.Label>
            <Menu.Item component={Link} to="/organization">
              {t("nav.organization")}
            </Menu.Item>
            <Menu.Item component={Link} to="/sessions">
              {t("nav.sessions")}
            </Menu.Item>
          </>
        )}
        <SchemeItems />
        {account && (
          <>
            <Menu.Divider />
            <Menu.Item onClick={() => void leave()}>{t("nav.sign-out")}</Menu.Item>
          </>
        )}
      </Menu.Dropdown>
    </Menu>
  );
};
