import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import { useState } from "react";
import { call } from "../../service/client";
import type { PlaceChoice } from "./place-choice";

/** A question being written. It is kept as a draft, or sent, once it says what about and what. */
export const useAsking = (car: string, begun: PlaceChoice) => {
  const queries = useQueryClient();
  const navigate = useNavigate();
  const [place, setPlace] = useState(begun);
  const [text, setText] = useState("");
  const [tried, setTried] = useState(false);
  const ask = useMutation({
    mutationFn: (send: boolean) =>
      call("questions.create", { params: { id: car }, body: { ...place, text: text.trim(), send } }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ["questions"] });
      await navigate({ to: "/questions/$question", params: { question: id } });
    },
  });
  const put = (send: boolean): void => {
    setTried(true);
    if (place.item !== "" && text.trim() !== "") ask.mutate(send);
  };
  return { place, setPlace, text, setText, needsItem: tried && place.item === "", ask, put };
};
