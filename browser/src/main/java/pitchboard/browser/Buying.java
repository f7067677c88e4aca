package pitchboard.browser;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pitchboard.buying.yard.Yard;
import pitchboard.documents.json.BuyingJson;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.intake.yard.YardText;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.job.Purchase;
import pitchboard.job.ReadJob;
import pitchboard.rules.books.Books;
import pitchboard.sheet.Sheet;

/** Buys for a job from a price list: reads both, solves the job, and plans which boards to buy and how to cut them. */
final class Buying implements Task {
    @Override
    public String name() {
        return "buy";
    }

    @Override
    public List<String> keys() {
        return List.of("job", "changes", "yard", "sheets");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        Request request = new Request(
                asked.shape("job", "a job"),
                asked.findShape("changes"),
                asked.shape("yard", "a price list"),
                asked.selection("sheets"));
        return request::answer;
    }

    /**
     * A job to be bought for.
     *
     * @param job what would stand in the job file
     * @param changes what would stand in the file of local changes that the job names
     * @param yard what would stand in the price list
     * @param sheets which of the papers for yard and bench are wanted as drawings
     */
    private record Request(Written job, Optional<Written> changes, Written yard, Selection sheets) {
        Json answer() {
            return YardText.of(new Transcript.Legible(yard))
                    .match(list -> answer(list.yard()), unread -> AnswerJson.problems("yard", unread.problems()));
        }

        private Json answer(Yard list) {
            return ReadJob.of(job, changes, Books.all())
                    .match(read -> bought(read.job(), list), unread -> AnswerJson.refused(unread.troubles()));
        }

        private Json bought(Job read, Yard list) {
            return Pipeline.solve(read)
                    .match(
                            designed -> bought(designed, list),
                            none -> Json.object().with("purchase", Json.none()).with("sheets", Drawings.NONE));
        }

        private Json bought(Outcome.Designed designed, Yard list) {
            Purchase purchase = Purchase.of(List.of(designed), list, JsonWriter.write(YardText.write(list)));
            return Json.object()
                    .with("purchase", BuyingJson.of(purchase))
                    .with("sheets", sheets.isNone() ? Drawings.NONE : Drawings.sheets(wanted(purchase)));
        }

        private List<Sheet> wanted(Purchase purchase) {
            return purchase.sheets().stream()
                    .filter(sheet -> sheets.includes(sheet.id()))
                    .toList();
        }
    }
}
