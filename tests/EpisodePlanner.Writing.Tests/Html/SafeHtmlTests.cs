using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace EpisodePlanner.Writing.Tests.Html;

/// <summary>
/// Expectations: CommonMark for what is let through; for what is not, the categories of OWASP's XSS filter evasion cheat
/// sheet, each written as a maker might paste it.
/// </summary>
public sealed partial class SafeHtmlTests
{
    private static readonly string[] Allowed =
        ["a", "blockquote", "br", "code", "em", "h1", "h2", "h3", "h4", "h5", "h6", "hr", "li", "ol", "p", "pre", "strong", "ul"];

    public static TheoryData<string> Attempts => new(
        // Script elements, plain, broken, nested, in other cases and encodings.
        "<script>alert(1)</script>",
        "<SCRIPT SRC=https://xss.example/x.js></SCRIPT>",
        "<scr<script>ipt>alert(1)</scr</script>ipt>",
        "<script\n>alert(1)</script\n>",
        "<<SCRIPT>alert(1);//\\<</SCRIPT>",
        "<SCRIPT/SRC=\"https://xss.example/x.js\"></SCRIPT>",
        "&lt;script&gt;alert(1)&lt;/script&gt;",
        "\\<script>alert(1)\\</script>",
        "`<script>alert(1)</script>`",
        "```html\n<script>alert(1)</script>\n```",
        "    <script>alert(1)</script>",
        // Event handlers.
        "<img src=x onerror=alert(1)>",
        "<IMG \"\"\"><SCRIPT>alert(1)</SCRIPT>\">",
        "<body onload=alert(1)>",
        "<a onmouseover=\"alert(1)\">x</a>",
        "<details open ontoggle=alert(1)>",
        "<input autofocus onfocus=alert(1)>",
        "[x](https://a.example \"t\\\" onmouseover=alert(1) x=\\\"\")",
        "[x](https://a.example 'a\" onclick=\"alert(1)')",
        "[x](<https://a.example\" onclick=\"alert(1)>)",
        "![x\" onerror=\"alert(1)](x)",
        "<https://a.example/\"onclick=\"alert(1)>",
        // javascript: and its disguises, as links, images, references and autolinks.
        "[x](javascript:alert(1))",
        "[x](JaVaScRiPt:alert(1))",
        "[x](<java\tscript:alert(1)>)",
        "[x](java&#x09;script:alert(1))",
        "[x](&#106;&#97;&#118;&#97;&#115;&#99;&#114;&#105;&#112;&#116;&#58;alert(1))",
        "[x](&#0000106&#0000097&#0000118&#0000097&#0000115&#0000099&#0000114&#0000105&#0000112&#0000116&#0000058;alert(1))",
        "[x](&#x01;javascript:alert(1))",
        "[x](javascript&colon;alert(1))",
        "[x](vbscript:msgbox(1))",
        "[x](livescript:alert(1))",
        "[x][y]\n\n[y]: javascript:alert(1)",
        "![x](javascript:alert(1))",
        "<javascript:alert(1)>",
        "[x](//javascript:alert(1)//)",
        // data: and other addresses that carry content or reach the machine.
        "[x](data:text/html;base64,PHNjcmlwdD5hbGVydCgxKTwvc2NyaXB0Pg==)",
        "<data:text/html,<script>alert(1)</script>>",
        "![x](data:image/svg+xml;base64,PHN2ZyBvbmxvYWQ9ImFsZXJ0KDEpIi8+)",
        "[x](file:///etc/passwd)",
        "[x](blob:https://a.example/1)",
        "[x](mhtml:https://a.example/x.mht)",
        // SVG and MathML.
        "<svg onload=alert(1)>",
        "<svg><script>alert(1)</script></svg>",
        "<svg><a xlink:href=\"javascript:alert(1)\"><text>x</text></a></svg>",
        "<svg><animate onbegin=alert(1) attributeName=x dur=1s>",
        "<math><maction actiontype=statusline xlink:href=javascript:alert(1)>x</maction></math>",
        // Styles.
        "<div style=\"background:url(javascript:alert(1))\">x</div>",
        "<style>@import 'https://xss.example/x.css';</style>",
        "<xss style=\"xss:expression(alert(1))\">",
        "<link rel=stylesheet href=javascript:alert(1)>",
        // Frames, objects, forms, and what changes the page around.
        "<iframe src=javascript:alert(1)></iframe>",
        "<object data=javascript:alert(1)></object>",
        "<embed src=https://xss.example/x.swf>",
        "<meta http-equiv=refresh content=\"0;url=javascript:alert(1)\">",
        "<base href=\"javascript:alert(1);//\">",
        "<form action=javascript:alert(1)><input type=submit></form>",
        "<button formaction=javascript:alert(1)>x</button>",
        // Comments, processing instructions, CDATA, conditional comments.
        "<!--[if gte IE 4]><script>alert(1)</script><![endif]-->",
        "<!-- --!><script>alert(1)</script>",
        "<![CDATA[<script>alert(1)</script>]]>",
        "<? echo('<script>alert(1)</script>'); ?>",
        // Mutation: what a parser turns into something else when it reads the result again.
        "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\">",
        "<template><script>alert(1)</script></template>",
        "<math><mtext><table><mglyph><style><img src=x onerror=alert(1)>",
        "<table><td background=javascript:alert(1)>",
        // Control characters and half characters.
        "<scr\0ipt>alert(1)</scr\0ipt>",
        "<img src=x onerror\u000b=alert(1)>",
        "\u0001<script>alert(1)</script>",
        "[x](\ud800javascript:alert(1))");

    [Theory]
    [MemberData(nameof(Attempts))]
    public void Of_Attempt_LeavesNothingThatRunsOrLoads(string markdown)
    {
        foreach (var written in (string[])[markdown, $"# {markdown}", $"> - {markdown}", $"a {markdown} b", $"**{markdown}**"])
        {
            AssertHarmless(SafeHtml.Of(written));
        }
    }

    [Theory]
    [InlineData("# A *fine* **day**", "<h1>A <em>fine</em> <strong>day</strong></h1>\n")]
    [InlineData("- a\n- b", "<ul>\n<li>a</li>\n<li>b</li>\n</ul>\n")]
    [InlineData("3. a\n4. b", "<ol start=\"3\">\n<li>a</li>\n<li>b</li>\n</ol>\n")]
    [InlineData("> quoted", "<blockquote>\n<p>quoted</p>\n</blockquote>\n")]
    [InlineData("a\\\nb", "<p>a<br>\nb</p>\n")]
    [InlineData("---", "<hr>\n")]
    [InlineData("`1 < 2`", "<p><code>1 &lt; 2</code></p>\n")]
    [InlineData("1 < 2 & 3", "<p>1 &lt; 2 &amp; 3</p>\n")]
    [InlineData("", "")]
    public void Of_Page_IsItsHtml(string markdown, string html) => Assert.Equal(html, SafeHtml.Of(markdown));

    [Theory]
    [InlineData("[site](https://a.example/x?y=1 \"a title\")", "https://a.example/x?y=1")]
    [InlineData("<mailto:me@a.example>", "mailto:me@a.example")]
    [InlineData("[here](/w/1)", "/w/1")]
    public void Of_Link_IsKeptAndTellsNothing(string markdown, string target)
    {
        var link = Assert.Single(Parse(SafeHtml.Of(markdown)).QuerySelectorAll("a"));

        Assert.Equal(target, link.GetAttribute("href"));
        Assert.Equal("nofollow noopener noreferrer", link.GetAttribute("rel"));
    }

    [Fact]
    public void Of_Picture_IsLeftOut() => Assert.Equal("<p>a  b</p>\n", SafeHtml.Of("a ![x](https://a.example/x.png) b"));

    [Theory]
    [InlineData(">")]
    [InlineData("[")]
    [InlineData("- ")]
    [InlineData("*a **b ")]
    public void Of_DeepNesting_ComesToAnEnd(string piece) =>
        AssertHarmless(SafeHtml.Of(string.Concat(Enumerable.Repeat(piece, 5_000)) + "<script>alert(1)</script>"));

    private static void AssertHarmless(string html)
    {
        var page = Parse(html);
        Assert.All(page.Body!.QuerySelectorAll("*"), element =>
        {
            Assert.Contains(element.LocalName, Allowed);
            Assert.All(element.Attributes, attribute => Assert.Contains(attribute.LocalName, (string[])["href", "rel", "start", "title"]));
            Assert.True(element.GetAttribute("href") is not { } target || IsHarmless(target), html);
        });
        Assert.Empty(page.Head!.Children);
        Assert.DoesNotContain(page.Body.Descendants(), node => node is IComment);
    }

    /// <summary>
    /// Relative, or of a scheme that only leads somewhere. What a scheme is, and that browsers leave controls out, is from
    /// the URL Standard.
    /// </summary>
    private static bool IsHarmless(string target)
    {
        var scheme = Scheme().Match(string.Concat(target.Where(c => c > ' ')));
        return !scheme.Success || scheme.Groups[1].Value is "http" or "https" or "mailto";
    }

    [GeneratedRegex("^([a-zA-Z][a-zA-Z0-9+.-]*):")]
    private static partial Regex Scheme();

    private static AngleSharp.Html.Dom.IHtmlDocument Parse(string html) => new HtmlParser().ParseDocument(html);
}
