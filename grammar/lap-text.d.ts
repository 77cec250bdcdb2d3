/** A .lap file brought in as its text: the bundler and the unit tests read it so. */
declare module '*.lap' {
  const text: string;
  export default text;
}
