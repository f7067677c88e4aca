package pitchboard.browser;

import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.documents.svg.PictureWriter;
import pitchboard.documents.svg.SvgWriter;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.pictures.FindingPlaces;
import pitchboard.sheet.pictures.Pictures;

/** Drawings as the page shows them: it has the type and the style, so no drawing carries them. */
final class Drawings {
    static final Json NONE = Json.list(List.<Sheet>of(), sheet -> Json.none());

    private static final SvgWriter SHEETS = SvgWriter.forPage();
    private static final PictureWriter PICTURES = new PictureWriter();

    private Drawings() {}

    static Json sheets(List<Sheet> sheets) {
        return Json.list(
                sheets,
                sheet -> Json.object()
                        .says("id", sheet.id())
                        .says("title", sheet.title())
                        .says("svg", SHEETS.write(sheet)));
    }

    /** With the places of findings on the picture that shows them. */
    static Json pictures(List<Picture> pictures, List<FindingPlaces.Placed> places) {
        return Json.list(
                pictures,
                picture -> Json.object()
                        .says("id", picture.id())
                        .says("svg", PICTURES.write(picture))
                        .with(
                                "places",
                                Json.list(picture.id().equals(Pictures.STAIR) ? places : List.of(), Drawings::place)));
    }

    private static Json place(FindingPlaces.Placed placed) {
        return Json.object()
                .with("finding", Json.number(placed.finding()))
                .with("x", Json.number(placed.box().left()))
                .with("y", Json.number(placed.box().top()))
                .with("width", Json.number(placed.box().width()))
                .with("height", Json.number(placed.box().height()));
    }
}
