import { useDecimalSign } from "./decimal-sign";
import { isLanguage, speak } from "./language";

/** In a worker: speaks the language and writes the decimal sign that the page has put into the worker's name: `de ,`. */
export async function speakAs(name: string): Promise<void> {
  const [language = "", sign] = name.split(" ");
  useDecimalSign(sign === "," ? "," : ".");
  if (isLanguage(language)) await speak(language);
}
