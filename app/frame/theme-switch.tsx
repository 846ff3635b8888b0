import { chosenTheme, THEMES } from "./theme";
import { chooseTheme } from "./theme-action";

const WORDS = { system: "As the system has it", light: "Light", dark: "Dark" } as const;

/** Light or dark, at the foot of every page. */
export async function ThemeSwitch() {
  const theme = await chosenTheme();
  return (
    <form className="theme" action={chooseTheme}>
      {THEMES.map((name) => (
        <button key={name} type="submit" className="quiet" name="theme" value={name} aria-pressed={name === theme}>
          {WORDS[name]}
        </button>
      ))}
    </form>
  );
}
