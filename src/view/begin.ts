import { useDecimalSign } from "../words/decimal-sign";
import { speak } from "../words/language";
import { chosenDecimalSign, chosenLanguage } from "./speech";

// Texts are made while the program loads, so the language is there before any of it.
useDecimalSign(chosenDecimalSign());
document.documentElement.lang = chosenLanguage();
await speak(chosenLanguage());
await import("./start");
