"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";
import { posted } from "../threads/posted.client";

/** Asks the server which beds to keep, and has the page made again when that is known. Leaving the page lets the question go. */
export function FindChoice({ seasonYear }: { seasonYear: number }) {
  const router = useRouter();
  const [isFailed, setFailed] = useState(false);
  useEffect(() => {
    const asking = new AbortController();
    const question = JSON.stringify({ question: "cheapest", seasonYear });
    fetch("/keep-or-dig/choose", posted(question, asking.signal))
      .then(async (response) => {
        const lines = (await response.text()).trimEnd().split("\n");
        const isAnswered = response.ok && "answer" in JSON.parse(lines[lines.length - 1]);
        if (isAnswered) router.refresh();
        else setFailed(true);
      })
      .catch(() => {
        if (!asking.signal.aborted) setFailed(true);
      });
    return () => asking.abort();
  }, [seasonYear, router]);
  return (
    <p className="lead working" role="status">
      {isFailed ? "Which beds to keep could not be worked out just now." : "Working out which beds to keep …"}
    </p>
  );
}
