/** The way to frost dates from the farm's own weather. */
export const WeatherFrost = () => (
  <section aria-labelledby="weather-frost">
    <h2 id="weather-frost">Frost dates from your own weather file</h2>
    <p>
      Daily highs and lows of ten years or more tell when your own ground freezes: bring them in on{" "}
      <a href="/farm/weather">Weather</a>.
    </p>
  </section>
);
