import { dirname } from "node:path";
import { Form } from "../ui/form.client";
import { TextField } from "../ui/form-fields.client";
import { startDemoHere, startOwnHere } from "./start-here-actions";

/** Where no farm lies and no copy of one: the two that can be started, and only when they are asked for. */
export const StartHere = ({ file }: { file: string }) => (
  <section aria-labelledby="start-here">
    <h2 id="start-here">Or start a farm here</h2>
    <p>
      Only if there was none. If your farm lies on a stick or another disk, put that in first: a farm that is started
      now lies on whatever disk holds <code>{dirname(file)}</code> at this moment.
    </p>
    <Form action={startOwnHere} submit="Start my own farm" label="Start my own farm" isQuiet>
      <div className="fields">
        <TextField
          name="name"
          label="Your farm’s name"
          isWide
          hint="Crops, curves and recipes are there to overrule; the beds are empty."
        />
      </div>
    </Form>
    <Form action={startDemoHere} submit="Start the demo farm here" label="Start the demo farm here" isQuiet>
      <p>Or look around first, in a farm that is invented from end to end.</p>
    </Form>
  </section>
);
